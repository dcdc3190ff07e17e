package weatherlap.sim.random;

import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Standard normal draws from uniforms, and lognormal factors of mean 1.
 *
 * <p>Quantiles stand in a table at equal steps of the uniform and are joined by straight lines; the error is below 1.1e-5 (tested). In the
 * two tails, each 1/64 of the draws, where lines would be too coarse, they are those of the library.
 */
public final class Normal {
    /** From the middle of an interval that holds 90 % to either end, standard deviations, to three decimals as tables have it. */
    public static final double NINETY_PERCENT = 1.645;

    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);
    private static final int STEPS = 4096;
    private static final double TAIL = 1.0 / 64;
    private static final double[] QUANTILES = IntStream.rangeClosed(0, STEPS)
            .mapToDouble(step -> STANDARD.inverseCumulativeProbability((double) step / STEPS))
            .toArray();

    private Normal() {}

    /** Standard normal quantiles of uniforms in (0, 1), one for one. */
    public static double[] quantiles(double[] uniforms) {
        double[] normals = new double[uniforms.length];
        for (int d = 0; d < normals.length; d++) {
            normals[d] = quantile(uniforms[d]);
        }
        return normals;
    }

    private static double quantile(double uniform) {
        if (uniform < TAIL || uniform > 1 - TAIL) {
            return STANDARD.inverseCumulativeProbability(uniform);
        }
        double position = uniform * STEPS;
        int below = (int) position;
        return QUANTILES[below] + (position - below) * (QUANTILES[below + 1] - QUANTILES[below]);
    }

    /**
     * Lognormal factors exp(σz − σ²/2), σ² = ln(1 + c²): mean 1, coefficient of variation c.
     *
     * @param spread coefficient of variation, 0 or more; 0 gives ones
     */
    public static double[] factors(double spread, double[] uniforms) {
        double variance = Math.log1p(spread * spread);
        double sigma = Math.sqrt(variance);
        double[] factors = new double[uniforms.length];
        for (int d = 0; d < factors.length; d++) {
            factors[d] = Math.exp(sigma * quantile(uniforms[d]) - variance / 2);
        }
        return factors;
    }
}
