package weatherlap.analysis.regression;

import java.util.Arrays;
import java.util.Optional;
import java.util.PrimitiveIterator;
import java.util.stream.Stream;
import org.apache.commons.math3.linear.ArrayRealVector;
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
public record HuberFit(RealVector coefficients, double[] deviations, double spread) {
    /** 95 % efficient where errors are normal. */
    public static final double BOUND = 1.345;
    /** Standard deviation over median absolute deviation, for normal errors. */
    public static final double MAD_TO_SD = 1 / 0.6745;
    /** Residuals smaller than this never make an outlier. */
    private static final double LEAST_SPREAD = 0.01;

    /** A ratio of hours is taken to be no smaller. */
    private static final double LEAST_OBSERVED = 1e-3;

    private static final int MOST_ROUNDS = 50;
    private static final double SETTLED = 1e-6;

    /** What a residual is. */
    public enum Residual {
        /** Observed less foreseen. */
        DIFFERENCE {
            @Override
            double of(double difference) {
                return difference;
            }

            @Override
            double weight(double residual) {
                return 1;
            }
        },
        /**
         * Log of observed over foreseen, where equations are about a guess that foresees 1: half weighs as much as double. The weight is
         * that at which the linear equations ask for Σ x ψ(r) ∂r/∂ŷ = 0.
         */
        LOG {
            @Override
            double of(double difference) {
                return Math.log1p(Math.max(difference, LEAST_OBSERVED - 1));
            }

            @Override
            double weight(double residual) {
                return residual == 0 ? 1 : residual / Math.expm1(residual);
            }
        };

        abstract double of(double difference);

        abstract double weight(double residual);
    }

    /** What is to be fitted, as linear equations about a guess; as many about any guess, in the same order. They are made anew each time. */
    @FunctionalInterface
    public interface Problem {
        Stream<Equation> about(double[] guess);
    }

    public static double spread(double[] residuals) {
        return MAD_TO_SD
                * StatUtils.percentile(Arrays.stream(residuals).map(Math::abs).toArray(), 50);
    }

    /**
     * Fits; the noise that is believed is the spread to begin with.
     *
     * @param start first guess
     * @param bounded how many of the coefficients, the first ones, may not fall below zero
     */
    public static HuberFit of(
            Problem problem,
            double[] start,
            Optional<RatePrior> prior,
            RateRegression.NoisePrior believed,
            int bounded,
            Residual residual) {
        double[] guess = start;
        double[] weights = problem.about(start).mapToDouble(equation -> 1).toArray();
        HuberFit fit = new HuberFit(new ArrayRealVector(start), weights, believed.noise());
        for (int round = 0; round < MOST_ROUNDS; round++) {
            RealVector next = weighted(problem.about(guess), weights, start.length, prior, bounded, fit.spread);
            boolean settled = fit.coefficients.getDistance(next) <= SETTLED * next.getNorm();
            guess = next.toArray();
            fit = judged(problem, next, residual);
            weights = new double[weights.length];
            for (int i = 0; i < weights.length; i++) {
                weights[i] = Math.min(1, BOUND / Math.abs(fit.deviations[i]))
                        * residual.weight(fit.deviations[i] * fit.spread);
            }
            if (settled) {
                break;
            }
        }
        return fit;
    }

    private static HuberFit judged(Problem problem, RealVector coefficients, Residual residual) {
        double[] guess = coefficients.toArray();
        double[] residuals = problem.about(guess)
                .mapToDouble(equation -> residual.of(equation.observed() - equation.foreseen(guess)))
                .toArray();
        double spread = Math.max(LEAST_SPREAD, spread(residuals));
        return new HuberFit(
                coefficients, Arrays.stream(residuals).map(r -> r / spread).toArray(), spread);
    }

    private static RealVector weighted(
            Stream<Equation> equations,
            double[] weights,
            int columns,
            Optional<RatePrior> prior,
            int bounded,
            double spread) {
        PrimitiveIterator.OfDouble pulls = Arrays.stream(weights).iterator();
        Triangle seen = Triangle.of(columns, equations.map(equation -> equation.pulling(pulls.nextDouble())));
        return RateRegression.coefficients(seen, prior, bounded, spread);
    }
}
