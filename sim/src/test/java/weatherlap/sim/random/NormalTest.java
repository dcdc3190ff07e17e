package weatherlap.sim.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** Normal and lognormal draws against the library's distribution and against handbook tables. */
class NormalTest {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    @Test
    void theTableStaysWithinItsErrorEverywhere() {
        double[] uniforms = IntStream.range(0, 1_000_003)
                .mapToDouble(i -> (i + 0.5) / 1_000_003)
                .toArray();
        double[] normals = Normal.quantiles(uniforms);
        for (int d = 0; d < uniforms.length; d++) {
            assertThat(normals[d]).isCloseTo(STANDARD.inverseCumulativeProbability(uniforms[d]), within(1.1e-5));
        }
    }

    @Test
    void quantilesRiseAcrossTheSeamsOfTableAndTails() {
        for (double seam : new double[] {1.0 / 64, 63.0 / 64}) {
            double[] around = IntStream.rangeClosed(-1000, 1000)
                    .mapToDouble(i -> seam + i * 1e-6)
                    .toArray();
            assertThat(Normal.quantiles(around)).isSorted();
        }
    }

    /** Abramowitz and Stegun 1972, table 26.1 and 26.5: P(1.28155) = 0.9, P(1.64485) = 0.95, P(2.32635) = 0.99, P(3.09023) = 0.999. */
    @Test
    void quantilesOfTheHandbook() {
        double[] normals = Normal.quantiles(new double[] {0.5, 0.9, 0.95, 0.99, 0.999});
        double[] expected = {0, 1.28155, 1.64485, 2.32635, 3.09023};
        for (int i = 0; i < expected.length; i++) {
            assertThat(normals[i]).isCloseTo(expected[i], within(1.5e-5));
        }
    }

    @Test
    void factorsHaveMeanOneAndTheSpreadAskedFor() {
        double[] uniforms = IntStream.range(0, 200_000)
                .mapToDouble(i -> (i + 0.5) / 200_000)
                .toArray();
        double[] factors = Normal.factors(0.4, uniforms);
        double mean = Arrays.stream(factors).average().orElseThrow();
        double square = Arrays.stream(factors).map(f -> f * f).average().orElseThrow();
        assertThat(mean).isCloseTo(1, within(1e-4));
        assertThat(Math.sqrt(square - mean * mean)).isCloseTo(0.4, within(1e-3));
        assertThat(Normal.factors(0, uniforms)).containsOnly(1);
    }
}
