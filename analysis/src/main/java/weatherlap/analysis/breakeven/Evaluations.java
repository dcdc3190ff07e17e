package weatherlap.analysis.breakeven;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import org.apache.commons.rng.UniformRandomProvider;
import weatherlap.analysis.breakeven.BreakEven.Effort;
import weatherlap.analysis.breakeven.BreakEven.Point;

/** Draws of the difference at every value asked for, each evaluated once. */
final class Evaluations {
    private final DifferenceAt difference;
    private final TreeMap<Double, double[]> seen = new TreeMap<>();

    Evaluations(DifferenceAt difference) {
        this.difference = difference;
    }

    double mean(double value) {
        return Arrays.stream(seen.computeIfAbsent(value, difference::draws))
                .average()
                .orElseThrow();
    }

    /** In rising order. */
    double[] values() {
        return seen.keySet().stream().mapToDouble(v -> v).toArray();
    }

    List<Point> curve() {
        List<Point> curve = new ArrayList<>();
        seen.forEach((value, draws) -> {
            long cheaper = Arrays.stream(draws).filter(d -> d < 0).count();
            curve.add(new Point(value, mean(value), (double) cheaper / draws.length));
        });
        return curve;
    }

    /** Means at the values when the draws are drawn anew with replacement, the same draws at every value. */
    List<double[]> resampled(Effort effort) {
        UniformRandomProvider stream = effort.streams().world("resampling of runs");
        List<double[]> columns = List.copyOf(seen.values());
        int draws = columns.get(0).length;
        List<double[]> resampled = new ArrayList<>();
        for (int r = 0; r < effort.resamples(); r++) {
            int[] times = new int[draws];
            for (int d = 0; d < draws; d++) {
                times[stream.nextInt(draws)]++;
            }
            resampled.add(columns.stream()
                    .mapToDouble(column -> weightedMean(column, times))
                    .toArray());
        }
        return resampled;
    }

    private static double weightedMean(double[] column, int[] times) {
        double sum = 0;
        for (int d = 0; d < column.length; d++) {
            sum += times[d] * column[d];
        }
        return sum / column.length;
    }
}
