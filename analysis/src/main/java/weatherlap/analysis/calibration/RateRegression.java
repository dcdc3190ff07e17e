package weatherlap.analysis.calibration;

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
record RateRegression(RealVector coefficients, RealMatrix covariance, double noise, double degrees) {
    private static final double LEAST_DEGREES = 1e-9;

    /** What is believed of the noise: as much as {@code degrees} residuals of that size would tell. Zero degrees: nothing. */
    record NoisePrior(double noise, double degrees) {
        static final NoisePrior NONE = new NoisePrior(1, 0);

        NoisePrior {
            Check.positive("noise", noise);
            Check.notNegative("degrees", degrees);
        }
    }

    /** Whether coefficients may fall below zero. */
    enum Sign {
        ANY,
        NOT_NEGATIVE
    }

    /**
     * Fits with unknown noise.
     *
     * @param design one row an observation
     * @param prior empty: flat, which makes it ordinary least squares
     * @throws IllegalArgumentException when there are fewer observations than coefficients and the prior is flat
     */
    static RateRegression fit(
            RealMatrix design, RealVector observed, Optional<RatePrior> prior, NoisePrior noisePrior, Sign sign) {
        double noise = prior.map(p -> NoiseEstimate.of(design, observed, p, noisePrior))
                .orElse(1.0);
        return fit(design, observed, prior, noisePrior, sign, noise);
    }

    /** Fits with data weighed against the prior as if the noise were known; the noise found is reported all the same. */
    static RateRegression fit(
            RealMatrix design,
            RealVector observed,
            Optional<RatePrior> prior,
            NoisePrior noisePrior,
            Sign sign,
            double noise) {
        if (prior.isEmpty()) {
            Check.within("observations", design.getRowDimension(), design.getColumnDimension(), Integer.MAX_VALUE);
        }
        RealMatrix stacked =
                prior.map(p -> below(design, p.root().scalarMultiply(noise))).orElse(design);
        RealVector right = prior.map(
                        p -> observed.append(p.root().operate(p.mean()).mapMultiply(noise)))
                .orElse(observed);
        QRDecomposition qr = new QRDecomposition(stacked);
        RealVector coefficients =
                switch (sign) {
                    case ANY -> qr.getSolver().solve(right);
                    case NOT_NEGATIVE -> NonNegativeLeastSquares.solve(stacked, right);
                };
        return judged(design, observed, coefficients, inverseOfSquare(qr), noisePrior);
    }

    /** @param unscaled covariance for noise 1 */
    private static RateRegression judged(
            RealMatrix design,
            RealVector observed,
            RealVector coefficients,
            RealMatrix unscaled,
            NoisePrior noisePrior) {
        RealMatrix spread = design.multiply(unscaled);
        double used = 0;
        for (int row = 0; row < design.getRowDimension(); row++) {
            used += spread.getRowVector(row).dotProduct(design.getRowVector(row));
        }
        RealVector residuals = observed.subtract(design.operate(coefficients));
        double degrees = noisePrior.degrees() + design.getRowDimension() - used;
        double squares =
                noisePrior.degrees() * noisePrior.noise() * noisePrior.noise() + residuals.dotProduct(residuals);
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

    double standardError(int coefficient) {
        return Math.sqrt(covariance.getEntry(coefficient, coefficient));
    }

    /** Half of the width of an interval that holds a coefficient with that probability, by Student's distribution. */
    double halfWidth(int coefficient, double probability, double degreesOfFreedom) {
        double quantile = new TDistribution(null, degreesOfFreedom).inverseCumulativeProbability((1 + probability) / 2);
        return quantile * standardError(coefficient);
    }
}
