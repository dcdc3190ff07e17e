package weatherlap.analysis.calibration;

import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * The noise s at which s² = (ν₀ s₀² + residual sum of squares at s) / (ν₀ + n − effective parameters at s).
 *
 * <p>With the prior whitened, γ = R(β − μ), Z = X R⁻¹, r = y − Xμ, and ZZᵀ = U Λ Uᵀ: the fit keeps λ/(λ + s²) of each component of
 * Uᵀr, so both sums cost nothing once the eigenvalues are known.
 *
 * @see "Golub, Heath, Wahba 1979, Technometrics 21(2) (effective parameters of a ridge regression)"
 */
final class NoiseEstimate {
    private static final int MOST_ROUNDS = 500;
    private static final double SETTLED = 1e-10;

    private final double[] eigenvalues;
    private final double[] components;
    /** Squares that no rates can explain. */
    private final double beyond;

    private final int observations;

    private NoiseEstimate(RealMatrix design, RealVector observed, RatePrior prior) {
        RealMatrix whitened = design.multiply(prior.inverseRoot());
        RealVector residuals = observed.subtract(design.operate(prior.mean()));
        observations = design.getRowDimension();
        int columns = design.getColumnDimension();
        if (observations > columns) {
            QRDecomposition qr = new QRDecomposition(whitened);
            RealVector turned = qr.getQT().operate(residuals);
            whitened = qr.getR().getSubMatrix(0, columns - 1, 0, columns - 1);
            residuals = turned.getSubVector(0, columns);
            RealVector rest = turned.getSubVector(columns, observations - columns);
            beyond = rest.dotProduct(rest);
        } else {
            beyond = 0;
        }
        EigenDecomposition eigen = new EigenDecomposition(whitened.multiply(whitened.transpose()));
        eigenvalues = eigen.getRealEigenvalues();
        components = eigen.getVT().operate(residuals).toArray();
    }

    static double of(RealMatrix design, RealVector observed, RatePrior prior, RateRegression.NoisePrior noisePrior) {
        return new NoiseEstimate(design, observed, prior).settle(noisePrior);
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
