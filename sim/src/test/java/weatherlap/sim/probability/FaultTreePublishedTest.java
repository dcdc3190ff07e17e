package weatherlap.sim.probability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weatherlap.sim.probability.FaultTree.and;
import static weatherlap.sim.probability.FaultTree.atLeast;
import static weatherlap.sim.probability.FaultTree.event;
import static weatherlap.sim.probability.FaultTree.or;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import weatherlap.sim.probability.FaultTree.Event;

/** Published trees, and hand calculations from their inputs. */
class FaultTreePublishedTest {

    private static final FaultTree A = event("a", 0.1);
    private static final FaultTree B = event("b", 0.2);
    private static final FaultTree C = event("c", 0.3);

    @Test
    void gatesByHand() {
        // 1 − 0.9·0.8·0.7; 0.1·0.2·0.3
        assertThat(ExactProbability.of(or(A, B, C))).isCloseTo(0.496, within(1e-15));
        assertThat(ExactProbability.of(and(A, B, C))).isCloseTo(0.006, within(1e-15));
        // 3·0.01·0.9 + 0.001
        FaultTree twoOfThree = atLeast(2, event("x", 0.1), event("y", 0.1), event("z", 0.1));
        assertThat(ExactProbability.of(twoOfThree)).isCloseTo(0.028, within(1e-15));
    }

    @Test
    void emptyGatesAreTheNeutralElements() {
        assertThat(ExactProbability.of(or())).isZero();
        assertThat(ExactProbability.of(and())).isOne();
        assertThat(ExactProbability.of(atLeast(0, A))).isOne();
    }

    @Test
    void bridgeNetworkOfFive() {
        // Textbook bridge, each component works with 0.9: R = 2p² + 2p³ − 5p⁴ + 2p⁵ = 0.97848 (computed from that
        // polynomial).
        FaultTree c1 = event("1", 0.9);
        FaultTree c2 = event("2", 0.9);
        FaultTree c3 = event("3", 0.9);
        FaultTree c4 = event("4", 0.9);
        FaultTree c5 = event("5", 0.9);
        FaultTree works = or(and(c1, c4), and(c2, c5), and(c1, c3, c5), and(c2, c3, c4));
        assertThat(ExactProbability.of(works)).isCloseTo(0.97848, within(1e-12));
    }

    @Test
    void pressureTank() {
        // NUREG-0492 (1981), pressure tank example, its failure probabilities; the exact top is computed from them.
        FaultTree s1 = event("S1", 3e-5);
        FaultTree k1 = event("K1", 3e-5);
        FaultTree r = event("R", 1e-4);
        FaultTree top = or(event("T", 5e-6), event("K2", 3e-5), and(event("S", 1e-4), or(s1, k1, r)));
        assertThat(ExactProbability.of(top)).isCloseTo(3.501584875e-5, within(5e-15));
        assertThat(MinimalCutSets.of(top))
                .containsExactly(Set.of("K2"), Set.of("T"), Set.of("K1", "S"), Set.of("R", "S"), Set.of("S", "S1"));
    }

    @Test
    void twoTrainsOfValveAndPump() {
        // Two trains, each lost by its valve (0.5) or its pump (0.7): (1 − 0.5·0.3)² = 0.7225.
        FaultTree first = or(event("valve 1", 0.5), event("pump 1", 0.7));
        FaultTree second = or(event("valve 2", 0.5), event("pump 2", 0.7));
        assertThat(ExactProbability.of(and(first, second))).isCloseTo(0.7225, within(1e-15));
    }

    @Test
    void veselyNetwork() {
        // Vesely 1970, Nuclear Engineering and Design 13: minimal cut sets and rates per hour, components not repaired.
        assertThat(ExactProbability.of(vesely(1000))).isCloseTo(3.4877077727e-3, within(5e-14));
        assertThat(ExactProbability.of(vesely(10_000))).isCloseTo(2.1165373410e-1, within(5e-12));
        assertThat(MinimalCutSets.of(vesely(1000)))
                .hasSize(6)
                .containsExactlyInAnyOrder(
                        Set.of("1", "2"),
                        Set.of("1", "3"),
                        Set.of("2", "3"),
                        Set.of("4", "5"),
                        Set.of("4", "6"),
                        Set.of("5", "6"));
    }

    /** Two systems of which each fails when two of its three components have: written as gates, not as the cut sets expected. */
    private static FaultTree vesely(double hours) {
        return or(
                new FaultTree.AtLeast(2, components(hours, 2.6e-6, 1, 2, 3)),
                new FaultTree.AtLeast(2, components(hours, 3.5e-5, 4, 5, 6)));
    }

    private static List<FaultTree> components(double hours, double ratePerHour, int... numbers) {
        return java.util.Arrays.stream(numbers)
                .<FaultTree>mapToObj(i -> event(Integer.toString(i), -Math.expm1(-ratePerHour * hours)))
                .toList();
    }

    @Test
    void aSharedEventIsCountedOnce() {
        // P(a ∧ (a ∨ b)) = P(a): multiplying the inputs as if they were independent would give 0.1·0.28.
        assertThat(ExactProbability.of(and(A, or(A, B)))).isCloseTo(0.1, within(1e-15));
        assertThat(MinimalCutSets.of(and(A, or(A, B)))).containsExactly(Set.of("a"));
    }

    @Test
    void oneNameWithTwoProbabilitiesIsRefused() {
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> ExactProbability.of(or(A, new Event("a", 0.2))))
                .hasMessageContaining("two probabilities");
    }

    @Test
    void cutSetsRebuildTheTree() {
        FaultTree d = event("d", 0.4);
        FaultTree tree = and(atLeast(2, A, B, C), or(d, A), or(B, and(C, d)));
        FaultTree[] rebuilt = MinimalCutSets.of(tree).stream()
                .map(set -> new FaultTree.And(Stream.of(A, B, C, d)
                        .filter(e -> set.contains(((Event) e).name()))
                        .toList()))
                .toArray(FaultTree[]::new);
        assertThat(ExactProbability.of(or(rebuilt))).isCloseTo(ExactProbability.of(tree), within(1e-15));
    }
}
