package weatherlap.sim.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.sim.assumptions.ThreePoint;

class PertQuantileTest {
    /** Reference: Commons Statistics' BetaDistribution, shape parameters of the beta-PERT. */
    @ParameterizedTest
    @CsvSource({"0,0,1", "0,0.1,1", "0,0.37,1", "0,0.5,1", "0,1,1", "2,4,12"})
    void theTableIsWithinTwoTenThousandthsOfTheRange(double low, double likely, double high) {
        double range = high - low;
        double alpha = 1 + 4 * (likely - low) / range;
        BetaDistribution exact = BetaDistribution.of(alpha, 6 - alpha);
        double[] uniforms = new double[2001];
        Arrays.setAll(uniforms, i -> (i + 0.5) / 2001);
        double[] draws = PertQuantile.draws(new ThreePoint(low, likely, high), uniforms);
        for (int i = 0; i < draws.length; i++) {
            assertThat((draws[i] - low) / range)
                    .isCloseTo(exact.inverseCumulativeProbability(uniforms[i]), within(2e-4));
        }
    }

    /** Mean (a + 4m + b)/6 of the PERT (2, 4, 12): 5.0, by hand; variance of the beta-PERT (5 − 2)(12 − 5)/7 = 3. */
    @Test
    void momentsOfTwoFourTwelve() {
        ThreePoint points = new ThreePoint(2, 4, 12);
        assertThat(points.mean()).isEqualTo(5.0);
        assertThat(points.variance()).isEqualTo(3.0);
        double[] uniforms = new double[20_000];
        Arrays.setAll(uniforms, i -> (i + 0.5) / uniforms.length);
        double[] draws = PertQuantile.draws(points, uniforms);
        double mean = Arrays.stream(draws).average().orElseThrow();
        double variance =
                Arrays.stream(draws).map(x -> (x - mean) * (x - mean)).average().orElseThrow();
        assertThat(mean).isCloseTo(5.0, within(1e-3));
        assertThat(variance).isCloseTo(3.0, within(5e-3));
    }

    @Test
    void aValueKnownExactlyIsDrawnExactly() {
        assertThat(PertQuantile.draws(ThreePoint.exactly(7), new double[] {0.1, 0.9}))
                .containsOnly(7.0);
    }
}
