package weatherlap.analysis.calibration;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.stat.StatUtils;
import weatherlap.analysis.regression.HuberFit;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.ThreePoint;

/**
 * Finds mistyped timings on the log scale. Of step s, log z_j ~ N(c, s²) with c ~ N(log of the table's rate, τ²): c is estimated with
 * Huber's weights, then each timing is judged by what the range and the other timings foresee of it. What is left of n timings moves
 * their mean by no more than (exp(limit · spread) − 1) / n each. A timing of 0 says that a step was not done; it is never gross.
 *
 * @param paceSpread coefficient of variation of the pace from shop to shop
 * @param spread of a log timing about its step's rate, at least this; more where the timings show more
 * @param limit spreads beyond which a timing is gross
 */
record GrossTimings(double paceSpread, double spread, double limit) {
    /** With fewer timings their spread is not estimated. */
    private static final int ENOUGH = 8;

    private static final int ROUNDS = 30;

    /** Timings that are set aside, by step in table order. */
    List<GrossTiming> of(JobTable table) {
        double seen = Math.max(spread, spreadSeen(table));
        return IntStream.range(0, table.steps().size())
                .filter(step -> table.steps().get(step).minutes().mean() > 0)
                .boxed()
                .flatMap(step -> ofStep(table, step, seen))
                .toList();
    }

    private static double[] logs(JobTable table, int step) {
        return Arrays.stream(table.timed(step))
                .map(z -> z > 0 ? Math.log(z) : Double.NaN)
                .toArray();
    }

    private static double[] known(double[] logs) {
        return Arrays.stream(logs).filter(x -> !Double.isNaN(x)).toArray();
    }

    private static double spreadSeen(JobTable table) {
        double[] residuals = IntStream.range(0, table.steps().size())
                .mapToObj(step -> known(logs(table, step)))
                .filter(logs -> logs.length > 2)
                .flatMapToDouble(logs -> {
                    double middle = StatUtils.percentile(logs, 50);
                    return Arrays.stream(logs).map(x -> x - middle);
                })
                .toArray();
        return residuals.length < ENOUGH ? 0 : HuberFit.spread(residuals);
    }

    private Stream<GrossTiming> ofStep(JobTable table, int place, double seen) {
        LabourStep step = table.steps().get(place);
        double[] logs = logs(table, place);
        double[] known = known(logs);
        if (known.length == 0) {
            return Stream.empty();
        }
        ThreePoint range = step.minutes();
        double believed = Math.log1p(range.variance() / Math.pow(range.mean(), 2) + Math.pow(paceSpread, 2));
        double rate = Math.log(range.mean()) - believed / 2;
        double center = rate;
        double precision = 1 / believed;
        for (int round = 0; round < ROUNDS; round++) {
            double from = center;
            double weight =
                    Arrays.stream(known).map(x -> weight(x - from, seen)).sum();
            double pull =
                    Arrays.stream(known).map(x -> weight(x - from, seen) * x).sum();
            precision = 1 / believed + weight;
            center = (rate / believed + pull) / precision;
        }
        double middle = center;
        double all = precision;
        return IntStream.range(0, logs.length)
                .filter(j -> !Double.isNaN(logs[j]))
                .mapToObj(j -> judged(table, j, step, logs[j], middle, all, seen))
                .flatMap(List::stream);
    }

    /** Precision that a timing lends to the middle of its step. */
    private static double weight(double residual, double spread) {
        double bounded = Math.min(1, HuberFit.BOUND * spread / Math.abs(residual));
        return bounded / Math.pow(spread, 2);
    }

    private List<GrossTiming> judged(
            JobTable table, int job, LabourStep step, double log, double middle, double precision, double seen) {
        double own = weight(log - middle, seen);
        double others = (middle * precision - own * log) / (precision - own);
        double deviation = Math.abs(log - others) / Math.sqrt(Math.pow(seen, 2) + 1 / (precision - own));
        if (deviation <= limit) {
            return List.of();
        }
        JobRecord record = table.lines().get(job).job();
        double minutes = record.stepMinutes().get(step.id());
        return List.of(new GrossTiming(record, step, minutes, minutes * Math.exp(others - log)));
    }
}
