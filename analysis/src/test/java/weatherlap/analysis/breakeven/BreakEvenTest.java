package weatherlap.analysis.breakeven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.breakeven.BreakEven.Crossing;
import weatherlap.analysis.breakeven.BreakEven.Effort;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.random.Streams;

class BreakEvenTest {
    private static final Effort EFFORT = new Effort(12, 1000, new Streams(2));

    @Test
    void wageByHand() {
        // The full flange takes 5 h longer and saves 180 USD of damage in one world and 220 in the other: 5 w − 200 = 0
        // at $40/h.
        BreakEven found = BreakEven.over(
                Contrast.USUAL, "wage", 20, 90, wage -> new double[] {5 * wage - 180, 5 * wage - 220}, EFFORT);

        Crossing crossing = found.crossings().get(0);
        assertThat(found.crossings()).hasSize(1);
        assertThat(crossing.value()).isCloseTo(40, within(1e-4));
        assertThat(crossing.preferredBelow()).isEqualTo(Method.FULL_FLANGE);
        assertThat(crossing.preferredAbove()).isEqualTo(Method.INSERT);
        assertThat(found.preferredAtLow()).isEqualTo(Method.FULL_FLANGE);
        // Two draws drawn anew are both 180 in a quarter of the cases, both 220 in another.
        assertThat(crossing.low90()).isCloseTo(36, within(1e-3));
        assertThat(crossing.high90()).isCloseTo(44, within(1e-3));
    }

    @Test
    void intervalOfALinearCaseIsThatOfTheMean() {
        // Saved damage normal about 200, SD 100, 400 draws: standard error of the crossing 100/√400/5 = 1, 90 % within
        // 1.645.
        NormalDistribution normal = new NormalDistribution(null, 200, 100);
        double[] saved = Arrays.stream(Sampling.STRATIFIED.uniforms(400, new Streams(2).world("damage")))
                .map(normal::inverseCumulativeProbability)
                .toArray();
        Crossing crossing = BreakEven.over(
                        Contrast.USUAL,
                        "wage",
                        20,
                        90,
                        wage -> Arrays.stream(saved).map(s -> 5 * wage - s).toArray(),
                        EFFORT)
                .crossings()
                .get(0);
        assertThat(crossing.value()).isCloseTo(40, within(0.02));
        assertThat(crossing.low90()).isCloseTo(40 - 1.645, within(0.15));
        assertThat(crossing.high90()).isCloseTo(40 + 1.645, within(0.15));
    }

    @Test
    void everyCrossingIsFoundInOrder() {
        // (v − 2)(v − 7): the insert outside, the full flange between.
        BreakEven found = BreakEven.over(Contrast.USUAL, "v", 0, 10, v -> new double[] {(v - 2) * (v - 7)}, EFFORT);
        assertThat(found.crossings())
                .extracting(Crossing::preferredAbove)
                .containsExactly(Method.FULL_FLANGE, Method.INSERT);
        assertThat(found.crossings().get(0).value()).isCloseTo(2, within(1e-4));
        assertThat(found.crossings().get(1).value()).isCloseTo(7, within(1e-4));
        // One draw drawn anew is the same draw.
        assertThat(found.crossings().get(1).low90()).isCloseTo(7, within(1e-3));
        assertThat(found.crossings().get(1).high90()).isCloseTo(7, within(1e-3));
    }

    @Test
    void aJumpIsACrossing() {
        BreakEven found = BreakEven.over(Contrast.USUAL, "v", 0, 1, v -> new double[] {v < 0.3217 ? 10 : -25}, EFFORT);
        assertThat(found.crossings().get(0).value()).isCloseTo(0.3217, within(1e-5));
    }

    @Test
    void noCrossingIsSaidByTheRangeAndOneMethod() {
        BreakEven found = BreakEven.over(Contrast.USUAL, "v", 0, 1, v -> new double[] {v + 1, v - 0.5}, EFFORT);
        assertThat(found.crossings()).isEmpty();
        assertThat(found.preferredAtLow()).isEqualTo(Method.INSERT);
        assertThat(found.low()).isZero();
        assertThat(found.high()).isEqualTo(1);
        assertThat(found.curve().get(0).firstCheaper()).isEqualTo(0.5);
    }

    @Test
    void resamplesThatDoNotCrossReachTheEndOfTheRange() {
        // Crossings of the two draws at 2 and 8: the range ends at 6, past the crossing of the mean at 5 but short of
        // 8.
        Crossing crossing = BreakEven.over(Contrast.USUAL, "v", 0, 6, v -> new double[] {v - 2, v - 8}, EFFORT)
                .crossings()
                .get(0);
        assertThat(crossing.value()).isCloseTo(5, within(1e-4));
        assertThat(crossing.low90()).isCloseTo(2, within(1e-3));
        assertThat(crossing.high90()).isEqualTo(6);
    }

    @Test
    void wordsGiveTheCrossingWithItsUnitAndTheRange() {
        BreakEven found = BreakEven.over(
                Contrast.USUAL, "wage", 0, 14_000, wage -> new double[] {5 * wage - 180, 5 * wage - 220}, EFFORT);
        assertThat(BreakEvenTable.words(found, "USD/h", 27))
                .singleElement()
                .asString()
                .startsWith("wage: below $40/h full-flange is preferred, above it the insert")
                .endsWith("looked from $0/h to $14,000/h). The value now is $27/h.");
        BreakEven none = BreakEven.over(Contrast.USUAL, "v", 0, 1, v -> new double[] {1}, EFFORT);
        assertThat(BreakEvenTable.words(none, "", 3))
                .containsExactly("v: no crossing from 0 to 1: the insert is preferred all over. The value now is 3.");
        assertThat(BreakEvenTable.of(List.of(found, none)).rows()).isEqualTo(2);
    }

    @Test
    void mapOfTwoNames() {
        // 2x + y − 10 changes sign at x = 5 − y/2.
        PreferenceMap map =
                PreferenceMap.over(Contrast.USUAL, "x", List.of(0.0, 3.0, 6.0), "y", List.of(0.0, 4.0, 20.0), (x, y) ->
                        new double[] {2 * x + y - 10});
        assertThat(map.crossings(0)).containsExactly(5.0);
        assertThat(map.crossings(1)).containsExactly(3.0);
        assertThat(map.crossings(2)).isEmpty();
        assertThat(map.preferred(0, 0)).isEqualTo(Method.FULL_FLANGE);
        assertThat(map.preferred(2, 0)).isEqualTo(Method.INSERT);
        assertThat(map.firstCheaper().get(0)).containsExactly(1.0, 1.0, 0.0);
    }

    @Test
    void anEmptyRangeIsRefused() {
        assertThatThrownBy(() -> BreakEven.over(Contrast.USUAL, "v", 1, 1, v -> new double[] {v}, EFFORT))
                .hasMessageContaining("high end");
    }
}
