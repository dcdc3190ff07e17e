package weatherlap.analysis.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WallBoundTest {
    private static final double[] REFERENCE = {0.9, 0.8, 1, 0.95, 0.5, 0.99, 0.7};
    /** By draw: 0.8, 0.9, 0.6, 0.95, 0.75, 0.97 and 0.7 with the last opening. */
    private static final double[] FIRST = {0.8, 1, 0.75, 1, 1, 0.97, 0.875};

    private static final double[] LAST = {1, 0.9, 0.8, 0.95, 0.75, 1, 0.8};
    private static final double[] WEIGHTS = {0.1, 0.2, 0.05, 0.25, 0.1, 0.2, 0.1};

    @Test
    void isTheMeanOfThePowerAsWritten() {
        double mean = 0;
        for (int d = 0; d < LAST.length; d++) {
            mean += WEIGHTS[d] * Math.pow(FIRST[d] * LAST[d] / REFERENCE[d], 3);
        }
        assertThat(bound(0.5).log(FIRST, LAST)).isCloseTo(Math.log(mean) / 3, within(1e-14));
    }

    /** The seven add up to 5.67. */
    @Test
    void aWallThatAloneIsTooWetIsInNoPlan() {
        assertThat(bound(0.81).log(FIRST, LAST)).isFinite();
        assertThat(bound(0.81 + 1e-8).log(FIRST, LAST)).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    private static WallBound bound(double leastDry) {
        return new WallBound(REFERENCE, WEIGHTS, 3, leastDry);
    }
}
