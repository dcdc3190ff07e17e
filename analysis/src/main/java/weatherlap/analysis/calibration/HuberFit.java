package weatherlap.analysis.calibration;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Huber's M-estimate with the median absolute deviation for its scale, by reweighted least squares: no observation pulls harder than
 * {@value #BOUND} spreads of a residual, however far away it is.
 *
 * @param coefficients of the columns
 * @param deviations residuals over their spread
 * @param spread robust standard deviation of a residual
 * @see "Huber 1981, Robust Statistics; Holland, Welsch 1977, Communications in Statistics A 6(9) (the constant 1.345)"
 */
record HuberFit(RealVector coefficients, double[] deviations, double spread) {
    /** 95 % efficient where errors are normal. */
    static final double BOUND = 1.345;
    /** Standard deviation over median absolute deviation, for normal errors. */
    static final double MAD_TO_SD = 1 / 0.6745;
    /** Residuals smaller than this never make an outlier. */
    private static final double LEAST_SPREAD = 0.01;

    private static final double LEAST_FORESEEN = 1e-3;
    private static final int MOST_ROUNDS = 50;
    private static final double SETTLED = 1e-6;

    /** What a residual is. */
    enum Residual {
        /** Observed less foreseen. */
        DIFFERENCE {
            @Override
            double of(double observed, double foreseen) {
                return observed - foreseen;
            }
        },
        /** log observed − log foreseen: half weighs as much as double. Observations are above 0. */
        LOG {
            @Override
            double of(double observed, double foreseen) {
                return Math.log(observed / Math.max(foreseen, LEAST_FORESEEN));
            }
        };

        abstract double of(double observed, double foreseen);

        /** Weight of a row in the linear equations at which they ask for Σ x ψ(r) ∂r/∂ŷ = 0. */
        double weight(double residual, double foreseen) {
            double y = Math.max(foreseen, LEAST_FORESEEN);
            return switch (this) {
                case DIFFERENCE -> 1;
                case LOG -> (residual == 0 ? 1 : residual / Math.expm1(residual)) / (y * y);
            };
        }
    }

    static double spread(double[] residuals) {
        return MAD_TO_SD
                * StatUtils.percentile(Arrays.stream(residuals).map(Math::abs).toArray(), 50);
    }

    /** Fits; the noise that is believed is the spread to begin with. */
    static HuberFit of(
            RealMatrix design,
            RealVector observed,
            Optional<RatePrior> prior,
            RateRegression.NoisePrior believed,
            RateRegression.Sign sign,
            Residual residual) {
        int rows = observed.getDimension();
        double[] weights = new double[rows];
        Arrays.fill(weights, 1);
        double spread = believed.noise();
        HuberFit fit = null;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            RealVector coefficients = weighted(design, observed, weights, prior, believed, sign, spread);
            RealVector foreseen = design.operate(coefficients);
            double[] residuals = IntStream.range(0, rows)
                    .mapToDouble(i -> residual.of(observed.getEntry(i), foreseen.getEntry(i)))
                    .toArray();
            double next = Math.max(LEAST_SPREAD, spread(residuals));
            double[] deviations = Arrays.stream(residuals).map(r -> r / next).toArray();
            for (int i = 0; i < rows; i++) {
                weights[i] = Math.min(1, BOUND / Math.abs(deviations[i]))
                        * residual.weight(residuals[i], foreseen.getEntry(i));
            }
            boolean settled =
                    fit != null && fit.coefficients.getDistance(coefficients) <= SETTLED * coefficients.getNorm();
            fit = new HuberFit(coefficients, deviations, next);
            spread = next;
            if (settled) {
                break;
            }
        }
        return fit;
    }

    private static RealVector weighted(
            RealMatrix design,
            RealVector observed,
            double[] weights,
            Optional<RatePrior> prior,
            RateRegression.NoisePrior believed,
            RateRegression.Sign sign,
            double spread) {
        RealMatrix rows = design.copy();
        RealVector right = new ArrayRealVector(observed);
        for (int i = 0; i < weights.length; i++) {
            double root = Math.sqrt(weights[i]);
            rows.setRowVector(i, design.getRowVector(i).mapMultiply(root));
            right.setEntry(i, root * observed.getEntry(i));
        }
        return RateRegression.fit(rows, right, prior, believed, sign, spread).coefficients();
    }
}
