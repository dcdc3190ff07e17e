package weatherlap.sim.probability;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import weatherlap.sim.probability.FaultTree.And;
import weatherlap.sim.probability.FaultTree.AtLeast;
import weatherlap.sim.probability.FaultTree.Event;
import weatherlap.sim.probability.FaultTree.Or;

/**
 * The probability of the top of a fault tree, exact up to rounding, shared events included.
 *
 * <p>The tree becomes a reduced ordered binary decision diagram: each node conditions on one event x, f = x·f₁ + (1 − x)·f₀, so that
 * P(f) = P(x)·P(f₁) + (1 − P(x))·P(f₀) with no term counted twice. Events are ordered as the tree first names them. Time grows with the
 * diagram, which is small for trees of a few dozen events and can be exponential in the worst case.
 */
public final class ExactProbability {
    private static final int FALSE = 0;
    private static final int TRUE = 1;

    private record Node(int event, int high, int low) {}

    private record Call(int test, int then, int otherwise) {}

    private final Map<String, Integer> order = new HashMap<>();
    private final List<Double> probabilities = new ArrayList<>();
    private final List<Node> nodes = new ArrayList<>(List.of(leaf(), leaf()));
    private final Map<Node, Integer> unique = new HashMap<>();
    private final Map<Call, Integer> calls = new HashMap<>();

    private ExactProbability() {}

    /** @throws IllegalArgumentException when one event name stands with two probabilities */
    public static double of(FaultTree tree) {
        ExactProbability diagram = new ExactProbability();
        return diagram.probability(diagram.build(tree), new HashMap<>());
    }

    private static Node leaf() {
        return new Node(Integer.MAX_VALUE, FALSE, FALSE);
    }

    private int build(FaultTree tree) {
        if (tree instanceof Event event) {
            return node(new Node(index(event), TRUE, FALSE));
        } else if (tree instanceof And and) {
            return and.inputs().stream().map(this::build).reduce(TRUE, (a, b) -> ite(a, b, FALSE));
        } else if (tree instanceof Or or) {
            return or.inputs().stream().map(this::build).reduce(FALSE, (a, b) -> ite(a, TRUE, b));
        }
        AtLeast gate = (AtLeast) tree;
        return atLeast(gate.count(), gate.inputs().stream().map(this::build).toList());
    }

    /** Row by row: after input i, reached[c] says that at least c of the inputs up to i fail. */
    private int atLeast(int count, List<Integer> inputs) {
        int[] reached = new int[count + 1];
        reached[0] = TRUE;
        for (int input : inputs) {
            for (int c = count; c > 0; c--) {
                reached[c] = ite(input, reached[c - 1], reached[c]);
            }
        }
        return reached[count];
    }

    private int index(Event event) {
        Integer known = order.putIfAbsent(event.name(), order.size());
        if (known == null) {
            probabilities.add(event.probability());
            return order.size() - 1;
        }
        if (probabilities.get(known) != event.probability()) {
            throw new IllegalArgumentException("The event " + event.name() + " has two probabilities: "
                    + probabilities.get(known) + " and " + event.probability());
        }
        return known;
    }

    private int node(Node node) {
        if (node.high() == node.low()) {
            return node.high();
        }
        return unique.computeIfAbsent(node, n -> {
            nodes.add(n);
            return nodes.size() - 1;
        });
    }

    /** If {@code test} then {@code then}, otherwise {@code otherwise}. */
    private int ite(int test, int then, int otherwise) {
        if (test == TRUE || then == otherwise) {
            return then;
        }
        if (test == FALSE) {
            return otherwise;
        }
        Call call = new Call(test, then, otherwise);
        Integer known = calls.get(call);
        if (known != null) {
            return known;
        }
        int event = Math.min(
                nodes.get(test).event(),
                Math.min(nodes.get(then).event(), nodes.get(otherwise).event()));
        int high = ite(given(test, event, true), given(then, event, true), given(otherwise, event, true));
        int low = ite(given(test, event, false), given(then, event, false), given(otherwise, event, false));
        int result = node(new Node(event, high, low));
        calls.put(call, result);
        return result;
    }

    private int given(int id, int event, boolean fails) {
        Node node = nodes.get(id);
        return node.event() != event ? id : fails ? node.high() : node.low();
    }

    private double probability(int id, Map<Integer, Double> known) {
        if (id <= TRUE) {
            return id;
        }
        Double value = known.get(id);
        if (value == null) {
            Node node = nodes.get(id);
            double p = probabilities.get(node.event());
            value = p * probability(node.high(), known) + (1 - p) * probability(node.low(), known);
            known.put(id, value);
        }
        return value;
    }
}
