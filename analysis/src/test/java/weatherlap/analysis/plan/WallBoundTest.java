package weatherlap.analysis.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WallBoundTest {
    private static final double[] REFERENCE = {0.9, 0.8, 1, 0.95, 0.5, 0.99, 0.7};
    private static final double[] DRY = {0.8, 0.9, 0.6, 0.95, 0.75, 0.97, 0.7};
    private static final double[] WEIGHTS = {0.1, 0.2, 0.05, 0.25, 0.1, 0.2, 0.1};

    @Test
    void isTheMeanOfThePowerAsWritten() {
        double mean = 0;
        for (int d = 0; d < DRY.length; d++) {
            mean += WEIGHTS[d] * Math.pow(DRY[d] / REFERENCE[d], 3);
        }
        assertThat(bound(0.5).log(DRY)).isCloseTo(Math.log(mean) / 3, within(1e-14));
    }

    /** The seven add up to 5.67. */
    @Test
    void aWallThatAloneIsTooWetIsInNoPlan() {
        assertThat(bound(0.81).log(DRY)).isFinite();
        assertThat(bound(0.81 + 1e-8).log(DRY)).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    private static WallBound bound(double leastDry) {
        return new WallBound(REFERENCE, WEIGHTS, 3, leastDry);
    }
}
