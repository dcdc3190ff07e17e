package weatherlap.analysis.money;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.StatUtils;
import weatherlap.sim.Check;
import weatherlap.sim.random.Normal;

/**
 * How much more than foreseen, from pairs of actual and foreseen amounts:
 *
 * <pre>
 *  actual_i = F · foreseen_i · e_i      e lognormal of mean 1 and log-deviation s,   ln F ~ N(0, τ²)
 *  x_i = ln(actual_i / foreseen_i) has mean ln F − s²/2
 *  s² = (d s₀² + Σ(x_i − x̄)²) / (d + n − 1)        d = 4, s₀ = 0.1 (judgement)
 *  ln F | x ~ N(w (x̄ + s²/2), 1/(1/τ² + n/s²)),    w = (n/s²) / (1/τ² + n/s²)
 * </pre>
 *
 * <p>A pair whose log is more than 3.5 robust deviations from the median is set aside where there are eight or more.
 *
 * @param rows that count
 * @param factor F as the pairs have it, shrunk towards 1
 * @param low end of the 90 % interval of F
 * @param high its other end
 * @param bias F as the pairs alone have it, less 1
 * @param spread s
 * @param aside places of the pairs that were set aside
 * @see "Iglewicz, Hoaglin 1993, How to Detect and Handle Outliers (the limit of 3.5 on the median absolute deviation)"
 */
public record Level(int rows, double factor, double low, double high, double bias, double spread, List<Integer> aside) {
    private static final double DEGREES = 4;
    private static final double SPREAD = 0.1;
    private static final int ENOUGH = 8;
    private static final double LIMIT = 3.5;
    private static final double NORMAL_OF_MAD = 1.4826;
    /** Pairs nearer to one another than this, as a log, are not told apart (judgement). */
    private static final double LEAST_SPREAD = 0.05;

    public Level {
        aside = List.copyOf(aside);
    }

    /**
     * An amount as it came and as it was foreseen, both above 0.
     */
    record Pair(double actual, double foreseen) {
        Pair {
            Check.positive("actual", actual);
            Check.positive("foreseen", foreseen);
        }

        double log() {
            return Math.log(actual / foreseen);
        }
    }

    /** @param prior τ, above 0: how far off the foreseen amounts may be together, as a log */
    static Level of(List<Pair> pairs, double prior) {
        double[] logs = pairs.stream().mapToDouble(Pair::log).toArray();
        List<Integer> aside = aside(logs);
        Set<Integer> left = Set.copyOf(aside);
        double[] kept = IntStream.range(0, logs.length)
                .filter(i -> !left.contains(i))
                .mapToDouble(i -> logs[i])
                .toArray();
        int n = kept.length;
        double mean = n == 0 ? 0 : StatUtils.mean(kept);
        double squares = Arrays.stream(kept).map(x -> (x - mean) * (x - mean)).sum();
        double variance = (DEGREES * SPREAD * SPREAD + squares) / (DEGREES + Math.max(0, n - 1));
        double seen = n / variance;
        double precision = 1 / (prior * prior) + seen;
        double raw = n == 0 ? 0 : mean + variance / 2;
        double log = seen / precision * raw;
        double half = Normal.NINETY_PERCENT / Math.sqrt(precision);
        return new Level(
                n,
                Math.exp(log),
                Math.exp(log - half),
                Math.exp(log + half),
                Math.expm1(raw),
                Math.sqrt(variance),
                aside);
    }

    private static List<Integer> aside(double[] logs) {
        List<Integer> aside = new ArrayList<>();
        if (logs.length >= ENOUGH) {
            double middle = StatUtils.percentile(logs, 50);
            double[] away = Arrays.stream(logs).map(x -> Math.abs(x - middle)).toArray();
            double spread = Math.max(LEAST_SPREAD, NORMAL_OF_MAD * StatUtils.percentile(away, 50));
            for (int i = 0; i < logs.length; i++) {
                if (away[i] > LIMIT * spread) {
                    aside.add(i);
                }
            }
        }
        return aside;
    }

    /** Whether any pair counts. */
    public boolean isSeen() {
        return rows > 0;
    }

    /** Standard deviation of ln F. */
    public double error() {
        return Math.log(high / low) / (2 * Normal.NINETY_PERCENT);
    }
}
