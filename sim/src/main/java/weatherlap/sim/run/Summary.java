package weatherlap.sim.run;

import weatherlap.sim.Check;
import weatherlap.sim.random.RankedDraws;

/** Mean and 10, 50, 90 % points of a simulated quantity, as {@link RankedDraws} has them. */
public record Summary(double mean, double p10, double p50, double p90) {
    public Summary {
        Check.finite("mean", mean);
        Check.finite("10% point", p10);
        Check.finite("50% point", p50);
        Check.finite("90% point", p90);
    }

    /** Of draws, which are left as they are. */
    public static Summary of(double[] draws) {
        return of(mean(draws), draws);
    }

    static double mean(double[] draws) {
        double total = 0;
        for (double draw : draws) {
            total += draw;
        }
        return total / draws.length;
    }

    /** Of draws whose mean is known exactly. */
    public static Summary of(double exactMean, double[] draws) {
        return at(exactMean, points(draws));
    }

    /** The 10, 50, 90 % points of draws. */
    static double[] points(double[] draws) {
        return RankedDraws.quantiles(draws, 0.1, 0.5, 0.9);
    }

    static Summary at(double mean, double[] points) {
        return new Summary(mean, points[0], points[1], points[2]);
    }

    public Summary times(double factor) {
        return new Summary(mean * factor, p10 * factor, p50 * factor, p90 * factor);
    }
}
