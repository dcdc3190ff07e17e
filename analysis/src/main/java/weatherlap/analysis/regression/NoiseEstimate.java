package weatherlap.analysis.regression;

import java.util.Arrays;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * The noise s at which s² = (ν₀ s₀² + residual sum of squares at s) / (ν₀ + n − effective parameters at s).
 *
 * <p>With the prior whitened, γ = R(β − μ), Z = X R⁻¹, r = y − Xμ, both turned into the {@link Triangle}, and ZZᵀ = U Λ Uᵀ: the fit keeps
 * λ/(λ + s²) of each component of Uᵀr, so both sums cost nothing once the eigenvalues are known.
 *
 * @see "Golub, Heath, Wahba 1979, Technometrics 21(2) (effective parameters of a ridge regression)"
 */
public final class NoiseEstimate {
    private static final int MOST_ROUNDS = 500;
    private static final double SETTLED = 1e-10;

    private final double[] eigenvalues;
    private final double[] components;
    /** Squares that no rates can explain. */
    private final double beyond;

    private final double observations;

    private NoiseEstimate(Triangle seen, RatePrior prior) {
        RealMatrix whitened = seen.root().multiply(prior.inverseRoot());
        RealVector residuals = seen.right().subtract(seen.root().operate(prior.mean()));
        observations = seen.observations();
        beyond = seen.beyond();
        SingularValueDecomposition parts = new SingularValueDecomposition(whitened);
        eigenvalues = Arrays.stream(parts.getSingularValues()).map(s -> s * s).toArray();
        components = parts.getUT().operate(residuals).toArray();
    }

    public static double of(Triangle seen, RatePrior prior, RateRegression.NoisePrior noisePrior) {
        return new NoiseEstimate(seen, prior).settle(noisePrior);
    }

    private double settle(RateRegression.NoisePrior noisePrior) {
        double variance = noisePrior.noise() * noisePrior.noise();
        double believed = noisePrior.degrees() * variance;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double used = 0;
            double squares = believed + beyond;
            for (int i = 0; i < eigenvalues.length; i++) {
                double kept = Math.max(0, eigenvalues[i]) / (Math.max(0, eigenvalues[i]) + variance);
                used += kept;
                squares += Math.pow((1 - kept) * components[i], 2);
            }
            double next = squares / (noisePrior.degrees() + observations - used);
            if (Math.abs(next - variance) <= SETTLED * variance) {
                return Math.sqrt(next);
            }
            variance = next;
        }
        return Math.sqrt(variance);
    }
}
