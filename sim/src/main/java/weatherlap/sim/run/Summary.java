package weatherlap.sim.run;

import java.util.Arrays;
import weatherlap.sim.Check;

/**
 * Mean and 10, 50, 90 % points of a simulated quantity.
 *
 * <p>A quantile at p of n sorted draws lies at position p (n − 1), between neighbours on a straight line (definition 7 of Hyndman and
 * Fan 1996).
 */
public record Summary(double mean, double p10, double p50, double p90) {
    public Summary {
        Check.finite("mean", mean);
        Check.finite("10 % point", p10);
        Check.finite("50 % point", p50);
        Check.finite("90 % point", p90);
    }

    /** Of draws, which are left as they are. */
    public static Summary of(double[] draws) {
        double total = 0;
        for (double draw : draws) {
            total += draw;
        }
        return of(total / draws.length, draws);
    }

    /** Of draws whose mean is known exactly. */
    public static Summary of(double exactMean, double[] draws) {
        double[] sorted = draws.clone();
        Arrays.sort(sorted);
        return new Summary(exactMean, quantile(sorted, 0.1), quantile(sorted, 0.5), quantile(sorted, 0.9));
    }

    public Summary times(double factor) {
        return new Summary(mean * factor, p10 * factor, p50 * factor, p90 * factor);
    }

    private static double quantile(double[] sorted, double p) {
        double position = p * (sorted.length - 1);
        int below = (int) position;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (position - below) * (sorted[above] - sorted[below]);
    }
}
