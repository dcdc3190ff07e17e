package weatherlap.analysis.breakeven;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import weatherlap.sim.Check;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.random.Streams;

/**
 * Where the preference changes over a range of one assumption.
 *
 * @param name of the assumption
 * @param low end of the range
 * @param high end of the range
 * @param crossings in rising order; none: the preference is the same all over
 * @param curve mean difference at every value evaluated, in rising order
 * @param preferredAtLow method at the low end
 */
public record BreakEven(
        String name, double low, double high, Method preferredAtLow, List<Crossing> crossings, List<Point> curve) {
    /** Of a crossing, as a share of the range. */
    private static final double ACCURACY = 1e-6;

    private static final int MOST_EVALUATIONS = 100;

    public BreakEven {
        crossings = List.copyOf(crossings);
        curve = List.copyOf(curve);
    }

    /**
     * A change of preference.
     *
     * @param low90 lower end of the interval of 90 %; an end of the range where some resamples did not cross
     * @param high90 its upper end
     */
    public record Crossing(Method preferredBelow, Method preferredAbove, double value, double low90, double high90) {}

    /**
     * One value evaluated.
     *
     * @param differenceUsd first less second, mean over the draws
     * @param firstCheaper share of the draws in which the first costs less
     */
    public record Point(double value, double differenceUsd, double firstCheaper) {}

    /**
     * How hard to look.
     *
     * @param steps of the scan
     * @param resamples of the draws
     */
    public record Effort(int steps, int resamples, Streams streams) {
        public Effort {
            Check.within("steps", steps, 1, 10_000);
            Check.within("resamples", resamples, 20, 1_000_000);
        }
    }

    /** Scans a range, low to high. */
    public static BreakEven over(
            Contrast contrast, String name, double low, double high, DifferenceAt difference, Effort effort) {
        Check.finite("low end", low);
        Check.within("high end", high, Math.nextUp(low), Double.MAX_VALUE);
        Evaluations seen = new Evaluations(difference);
        double[] scan = new double[effort.steps() + 1];
        for (int s = 0; s < scan.length; s++) {
            scan[s] = low + (high - low) * s / effort.steps();
            seen.mean(scan[s]);
        }
        List<Root> roots = new ArrayList<>();
        for (int s = 1; s < scan.length; s++) {
            Method below = contrast.cheaper(seen.mean(scan[s - 1]));
            if (contrast.cheaper(seen.mean(scan[s])) != below) {
                roots.add(new Root(root(scan[s - 1], scan[s], seen, (high - low) * ACCURACY), below));
            }
        }
        return new BreakEven(
                name,
                low,
                high,
                contrast.cheaper(seen.mean(low)),
                crossings(contrast, roots, low, high, seen, effort),
                seen.curve());
    }

    private static List<Crossing> crossings(
            Contrast contrast, List<Root> roots, double low, double high, Evaluations seen, Effort effort) {
        if (roots.isEmpty()) {
            return List.of();
        }
        List<double[]> resampled = seen.resampled(effort);
        double[] values = seen.values();
        List<Crossing> crossings = new ArrayList<>();
        for (int r = 0; r < roots.size(); r++) {
            Root root = roots.get(r);
            double from = r == 0 ? low : (roots.get(r - 1).value + root.value) / 2;
            double to = r == roots.size() - 1 ? high : (root.value + roots.get(r + 1).value) / 2;
            double[] found = resampled.stream()
                    .mapToDouble(means -> crossing(contrast, values, means, root, from, to))
                    .toArray();
            Percentile percentile = new Percentile().withEstimationType(Percentile.EstimationType.R_7);
            crossings.add(new Crossing(
                    root.below,
                    contrast.other(root.below),
                    root.value,
                    percentile.evaluate(found, 5),
                    percentile.evaluate(found, 95)));
        }
        return crossings;
    }

    private record Root(double value, Method below) {}

    private static double root(double low, double high, Evaluations seen, double accuracy) {
        return new BrentSolver(accuracy).solve(MOST_EVALUATIONS, seen::mean, low, high);
    }

    /** Where means on straight lines cross zero as the root does, nearest to it; without such a crossing, the end beyond which it lies. */
    private static double crossing(
            Contrast contrast, double[] values, double[] means, Root root, double from, double to) {
        double nearest = Double.NaN;
        Method first = null;
        for (int k = 1; k < values.length; k++) {
            if (values[k] <= from || values[k - 1] >= to) {
                continue;
            }
            Method below = contrast.cheaper(means[k - 1]);
            first = first == null ? below : first;
            if (below == root.below && contrast.cheaper(means[k]) != below) {
                double share = means[k - 1] / (means[k - 1] - means[k]);
                double value = values[k - 1] + share * (values[k] - values[k - 1]);
                if (!(Math.abs(value - root.value) >= Math.abs(nearest - root.value))) {
                    nearest = value;
                }
            }
        }
        return Double.isNaN(nearest) ? (first == root.below ? to : from) : Math.max(from, Math.min(to, nearest));
    }
}
