package weatherlap.sim.probability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import weatherlap.sim.probability.FaultTree.And;
import weatherlap.sim.probability.FaultTree.AtLeast;
import weatherlap.sim.probability.FaultTree.Event;
import weatherlap.sim.probability.FaultTree.Or;

/** The engine against the sum over all states, on random trees that share their events. */
class FaultTreePropertyTest {

    private static final int EVENTS = 5;

    @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
    void exactEqualsTheSumOverAllStates(@ForAll("trees") FaultTree tree) {
        double sum = 0;
        for (int state = 0; state < 1 << EVENTS; state++) {
            double weight = 1;
            for (int e = 0; e < EVENTS; e++) {
                weight *= (state >> e & 1) == 1 ? probability(e) : 1 - probability(e);
            }
            sum += fails(tree, state) ? weight : 0;
        }
        assertThat(ExactProbability.of(tree)).isCloseTo(sum, within(1e-13));
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void theTopFailsExactlyWhenACutSetDoes(@ForAll("trees") FaultTree tree) {
        var cuts = MinimalCutSets.of(tree);
        for (int state = 0; state < 1 << EVENTS; state++) {
            int failed = state;
            boolean cut = cuts.stream()
                    .anyMatch(set -> set.stream().allMatch(name -> (failed >> Integer.parseInt(name) & 1) == 1));
            assertThat(cut).isEqualTo(fails(tree, state));
        }
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void aLikelierEventNeverHelps(
            @ForAll("trees") FaultTree tree, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        double before = ExactProbability.of(tree);
        double raised = probability(0) + share * (1 - probability(0));
        assertThat(ExactProbability.of(with(tree, Map.of("0", raised)))).isGreaterThanOrEqualTo(before - 1e-14);
    }

    @Provide
    Arbitrary<FaultTree> trees() {
        return tree(3);
    }

    private static Arbitrary<FaultTree> tree(int depth) {
        Arbitrary<FaultTree> leaf = Arbitraries.integers()
                .between(0, EVENTS - 1)
                .map(e -> FaultTree.event(Integer.toString(e), probability(e)));
        if (depth == 0) {
            return leaf;
        }
        Arbitrary<List<FaultTree>> inputs = tree(depth - 1).list().ofMinSize(1).ofMaxSize(3);
        Arbitrary<FaultTree> gate = Combinators.combine(
                        inputs, Arbitraries.integers().between(0, 3))
                .as((in, kind) -> switch (kind) {
                    case 0 -> new And(in);
                    case 1 -> new Or(in);
                    default -> new AtLeast(Math.min(kind, in.size()), in);
                });
        return Arbitraries.frequencyOf(net.jqwik.api.Tuple.of(1, leaf), net.jqwik.api.Tuple.of(3, gate));
    }

    private static double probability(int event) {
        return 0.1 + 0.17 * event;
    }

    private static boolean fails(FaultTree tree, int state) {
        if (tree instanceof Event event) {
            return (state >> Integer.parseInt(event.name()) & 1) == 1;
        } else if (tree instanceof And and) {
            return and.inputs().stream().allMatch(in -> fails(in, state));
        } else if (tree instanceof Or or) {
            return or.inputs().stream().anyMatch(in -> fails(in, state));
        }
        AtLeast gate = (AtLeast) tree;
        return gate.inputs().stream().filter(in -> fails(in, state)).count() >= gate.count();
    }

    private static FaultTree with(FaultTree tree, Map<String, Double> changed) {
        if (tree instanceof Event event) {
            return new Event(event.name(), changed.getOrDefault(event.name(), event.probability()));
        } else if (tree instanceof And and) {
            return new And(with(and.inputs(), changed));
        } else if (tree instanceof Or or) {
            return new Or(with(or.inputs(), changed));
        }
        AtLeast gate = (AtLeast) tree;
        return new AtLeast(gate.count(), with(gate.inputs(), changed));
    }

    private static List<FaultTree> with(List<FaultTree> inputs, Map<String, Double> changed) {
        List<FaultTree> result = new ArrayList<>();
        inputs.forEach(in -> result.add(with(in, changed)));
        return result;
    }
}
