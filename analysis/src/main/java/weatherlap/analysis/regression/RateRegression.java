package weatherlap.analysis.regression;

import java.util.Optional;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import weatherlap.sim.Check;

/**
 * Linear regression with a normal prior on the coefficients; the equations stand in the package's page.
 *
 * @param coefficients posterior mean, or nearest to it without a coefficient below zero where that was asked
 * @param covariance of the coefficients
 * @param noise standard deviation of an observation
 * @param degrees of freedom of the noise
 */
public record RateRegression(RealVector coefficients, RealMatrix covariance, double noise, double degrees) {
    private static final double LEAST_DEGREES = 1e-9;

    /** What is believed of the noise: as much as {@code degrees} residuals of that size would tell. Zero degrees: nothing. */
    public record NoisePrior(double noise, double degrees) {
        public static final NoisePrior NONE = new NoisePrior(1, 0);

        public NoisePrior {
            Check.positive("noise", noise);
            Check.notNegative("degrees", degrees);
        }
    }

    /**
     * Fits with unknown noise.
     *
     * @param prior empty: flat, which makes it ordinary least squares
     * @param bounded how many of the coefficients, the first ones, may not fall below zero
     * @throws IllegalArgumentException when there are fewer observations than coefficients and the prior is flat
     */
    public static RateRegression fit(Triangle seen, Optional<RatePrior> prior, NoisePrior noisePrior, int bounded) {
        double noise = prior.map(p -> NoiseEstimate.of(seen, p, noisePrior)).orElse(1.0);
        return fit(seen, prior, noisePrior, bounded, noise);
    }

    /** Fits with data weighed against the prior as if the noise were known; the noise found is reported all the same. */
    public static RateRegression fit(
            Triangle seen, Optional<RatePrior> prior, NoisePrior noisePrior, int bounded, double noise) {
        Stacked stacked = Stacked.of(seen, prior, noise);
        return judged(
                seen, stacked.solved(bounded), inverseOfSquare(new QRDecomposition(stacked.matrix())), noisePrior);
    }

    /** The coefficients of such a fit alone. */
    static RealVector coefficients(Triangle seen, Optional<RatePrior> prior, int bounded, double noise) {
        return Stacked.of(seen, prior, noise).solved(bounded);
    }

    /** What was seen, and the prior below it as if the noise were known. */
    private record Stacked(RealMatrix matrix, RealVector right) {
        static Stacked of(Triangle seen, Optional<RatePrior> prior, double noise) {
            if (prior.isEmpty()) {
                Check.within("observations", seen.observations(), seen.columns(), Integer.MAX_VALUE);
            }
            RealMatrix matrix = prior.map(p -> below(seen.root(), p.root().scalarMultiply(noise)))
                    .orElse(seen.root());
            RealVector right = prior.map(
                            p -> seen.right().append(p.root().operate(p.mean()).mapMultiply(noise)))
                    .orElse(seen.right());
            return new Stacked(matrix, right);
        }

        RealVector solved(int bounded) {
            return NonNegativeLeastSquares.solve(matrix, right, bounded);
        }
    }

    /** @param unscaled covariance for noise 1 */
    private static RateRegression judged(
            Triangle seen, RealVector coefficients, RealMatrix unscaled, NoisePrior noisePrior) {
        RealMatrix spread = seen.root().multiply(unscaled);
        double used = 0;
        for (int row = 0; row < seen.columns(); row++) {
            used += spread.getRowVector(row).dotProduct(seen.root().getRowVector(row));
        }
        RealVector residuals = seen.right().subtract(seen.root().operate(coefficients));
        double degrees = noisePrior.degrees() + seen.observations() - used;
        double squares = noisePrior.degrees() * noisePrior.noise() * noisePrior.noise()
                + residuals.dotProduct(residuals)
                + seen.beyond();
        double variance = degrees > LEAST_DEGREES ? squares / degrees : 0;
        return new RateRegression(
                coefficients, unscaled.scalarMultiply(variance), Math.sqrt(variance), Math.max(degrees, LEAST_DEGREES));
    }

    /** (AᵀA)⁻¹ = R⁻¹R⁻ᵀ. */
    private static RealMatrix inverseOfSquare(QRDecomposition qr) {
        int columns = qr.getR().getColumnDimension();
        RealMatrix inverse = RatePrior.inverse(qr.getR().getSubMatrix(0, columns - 1, 0, columns - 1));
        return inverse.multiply(inverse.transpose());
    }

    private static RealMatrix below(RealMatrix top, RealMatrix bottom) {
        int rows = top.getRowDimension();
        RealMatrix all = MatrixUtils.createRealMatrix(rows + bottom.getRowDimension(), top.getColumnDimension());
        all.setSubMatrix(top.getData(), 0, 0);
        all.setSubMatrix(bottom.getData(), rows, 0);
        return all;
    }

    public double standardError(int coefficient) {
        return Math.sqrt(covariance.getEntry(coefficient, coefficient));
    }

    /** Half of the width of an interval that holds a coefficient with that probability, by Student's distribution. */
    public double halfWidth(int coefficient, double probability, double degreesOfFreedom) {
        double quantile = new TDistribution(null, degreesOfFreedom).inverseCumulativeProbability((1 + probability) / 2);
        return quantile * standardError(coefficient);
    }
}
