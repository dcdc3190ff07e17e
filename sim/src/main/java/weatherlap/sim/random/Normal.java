package weatherlap.sim.random;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** Standard normal draws from uniforms, and lognormal factors of mean 1. */
public final class Normal {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    private Normal() {}

    /** Standard normal quantiles of uniforms in (0, 1), one for one. */
    public static double[] quantiles(double[] uniforms) {
        double[] normals = new double[uniforms.length];
        for (int d = 0; d < normals.length; d++) {
            normals[d] = STANDARD.inverseCumulativeProbability(uniforms[d]);
        }
        return normals;
    }

    /**
     * Lognormal factors exp(σz − σ²/2), σ² = ln(1 + c²): mean 1, coefficient of variation c.
     *
     * @param spread coefficient of variation, 0 or more; 0 gives ones
     */
    public static double[] factors(double spread, double[] uniforms) {
        double variance = Math.log1p(spread * spread);
        double sigma = Math.sqrt(variance);
        double[] factors = quantiles(uniforms);
        for (int d = 0; d < factors.length; d++) {
            factors[d] = Math.exp(sigma * factors[d] - variance / 2);
        }
        return factors;
    }
}
