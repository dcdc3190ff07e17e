package weatherlap.analysis.backtest;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.special.Gamma;
import weatherlap.sim.Check;

/**
 * What was foreseen of one amount, as an ensemble of equally likely values, ascending.
 *
 * <p>Scored by the continuous ranked probability score, in the unit of the amount, smaller is better; of one value it is the absolute error:
 *
 * <pre>  CRPS = (1/m) Σ_i |x_i − y| − (1/2m²) Σ_i Σ_j |x_i − x_j|</pre>
 *
 * @see "Gneiting, Raftery 2007, Journal of the American Statistical Association 102(477), 4.2 (the score and its form for ensembles)"
 */
public final class Forecast {
    /** Equally likely points that stand for a distribution. */
    static final int POINTS = 200;

    private static final double SHORTEST_TAIL = 1e-12;
    private static final int MOST_COUNTED = 100_000;

    private final double[] values;

    private Forecast(double[] sorted) {
        values = sorted;
    }

    /** Values that are equally likely, one or more. */
    public static Forecast of(double... likely) {
        Check.within("values", likely.length, 1, Integer.MAX_VALUE);
        double[] sorted = likely.clone();
        Arrays.sort(sorted);
        return new Forecast(sorted);
    }

    /** The points in the middle of equal parts of a distribution. */
    public static Forecast ofQuantiles(DoubleUnaryOperator quantile) {
        double[] points = new double[POINTS];
        Arrays.setAll(points, i -> quantile.applyAsDouble((i + 0.5) / POINTS));
        return of(points);
    }

    /**
     * Lognormal.
     *
     * @param mean above 0
     * @param spread coefficient of variation, 0 or more
     */
    public static Forecast lognormal(double mean, double spread) {
        Check.positive("mean", mean);
        double variance = Math.log1p(spread * spread);
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        return ofQuantiles(
                p -> mean * Math.exp(Math.sqrt(variance) * normal.inverseCumulativeProbability(p) - variance / 2));
    }

    /**
     * A count whose rate is known to a gamma distribution (negative binomial), or for sure (Poisson).
     *
     * @param mean 0 or more
     * @param spread coefficient of variation of the rate, 0 or more
     */
    public static Forecast count(double mean, double spread) {
        Check.notNegative("mean", mean);
        if (mean == 0) {
            return of(0);
        }
        double[] points = new double[POINTS];
        double shape = spread > 0 ? 1 / (spread * spread) : Double.POSITIVE_INFINITY;
        double below = 0;
        int n = 0;
        int filled = 0;
        while (filled < POINTS && n < MOST_COUNTED) {
            below += Math.exp(logChance(n, mean, shape));
            while (filled < POINTS && (filled + 0.5) / POINTS <= below + SHORTEST_TAIL) {
                points[filled++] = n;
            }
            n++;
        }
        Arrays.fill(points, filled, POINTS, n);
        return of(points);
    }

    private static double logChance(int n, double mean, double shape) {
        if (Double.isInfinite(shape)) {
            return n * Math.log(mean) - mean - Gamma.logGamma(n + 1.0);
        }
        return Gamma.logGamma(shape + n)
                - Gamma.logGamma(shape)
                - Gamma.logGamma(n + 1.0)
                + shape * Math.log(shape / (shape + mean))
                + n * Math.log(mean / (shape + mean));
    }

    /** The same with every value changed. */
    public Forecast map(DoubleUnaryOperator change) {
        return of(Arrays.stream(values).map(change).toArray());
    }

    public double mean() {
        return Arrays.stream(values).average().orElseThrow();
    }

    /** The value that a share of the ensemble does not pass. */
    public double quantile(double share) {
        int place = (int) Math.ceil(share * values.length - 1e-9) - 1;
        return values[Math.max(0, Math.min(values.length - 1, place))];
    }

    /** Whether it is more than one number. */
    public boolean isSpread() {
        return values[values.length - 1] > values[0];
    }

    /** The continuous ranked probability score of what came, in its unit. */
    public double score(double came) {
        double miss = 0;
        double apart = 0;
        int m = values.length;
        for (int i = 0; i < m; i++) {
            miss += Math.abs(values[i] - came);
            // Σ_i Σ_j |x_i − x_j| = 2 Σ_i (2i − m + 1) x_i of values in order
            apart += (2.0 * i - m + 1) * values[i];
        }
        return miss / m - apart / ((double) m * m);
    }

    /** Chance that was given to less than came. */
    public double below(double came) {
        return Arrays.stream(values).filter(x -> x < came).count() / (double) values.length;
    }

    /** Chance that was given to no more than came. */
    public double upTo(double came) {
        return Arrays.stream(values).filter(x -> x <= came).count() / (double) values.length;
    }
}
