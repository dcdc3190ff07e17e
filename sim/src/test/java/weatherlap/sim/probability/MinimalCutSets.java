package weatherlap.sim.probability;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import weatherlap.sim.probability.FaultTree.And;
import weatherlap.sim.probability.FaultTree.AtLeast;
import weatherlap.sim.probability.FaultTree.Event;
import weatherlap.sim.probability.FaultTree.Or;

/**
 * The smallest sets of events that together make the top fail: no set holds another. From the bottom up, an OR joins the sets of its
 * inputs, an AND pairs them, at-least-k unites the ANDs of every k inputs; after each gate sets that hold another are dropped.
 */
public final class MinimalCutSets {
    private MinimalCutSets() {}

    /** Ordered by size, then by name. */
    public static List<Set<String>> of(FaultTree tree) {
        return sets(tree).stream()
                .sorted(Comparator.<Set<String>>comparingInt(Set::size).thenComparing(set -> String.join(" ", set)))
                .toList();
    }

    private static List<Set<String>> sets(FaultTree tree) {
        if (tree instanceof Event event) {
            return List.of(Set.of(event.name()));
        } else if (tree instanceof Or or) {
            return minimal(or.inputs().stream().flatMap(input -> sets(input).stream()));
        } else if (tree instanceof And and) {
            return all(and.inputs());
        }
        AtLeast gate = (AtLeast) tree;
        return minimal(combinations(gate.inputs(), gate.count()).stream().flatMap(chosen -> all(chosen).stream()));
    }

    private static List<Set<String>> all(List<FaultTree> inputs) {
        List<Set<String>> product = List.of(Set.of());
        for (FaultTree input : inputs) {
            List<Set<String>> right = sets(input);
            product = minimal(product.stream().flatMap(a -> right.stream().map(b -> union(a, b))));
        }
        return product;
    }

    private static Set<String> union(Set<String> a, Set<String> b) {
        Set<String> both = new TreeSet<>(a);
        both.addAll(b);
        return both;
    }

    private static List<Set<String>> minimal(Stream<Set<String>> sets) {
        List<Set<String>> kept = new ArrayList<>();
        sets.sorted(Comparator.comparingInt(Set::size))
                .filter(set -> kept.stream().noneMatch(set::containsAll))
                .forEach(kept::add);
        return kept;
    }

    private static List<List<FaultTree>> combinations(List<FaultTree> inputs, int count) {
        if (count == 0) {
            return List.of(List.of());
        }
        List<List<FaultTree>> found = new ArrayList<>();
        for (int i = 0; i + count <= inputs.size(); i++) {
            for (List<FaultTree> rest : combinations(inputs.subList(i + 1, inputs.size()), count - 1)) {
                List<FaultTree> chosen = new ArrayList<>(rest);
                chosen.add(0, inputs.get(i));
                found.add(chosen);
            }
        }
        return found;
    }
}
