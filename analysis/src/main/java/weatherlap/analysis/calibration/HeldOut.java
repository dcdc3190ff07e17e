package weatherlap.analysis.calibration;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;

/**
 * Jobs foreseen by rates that know nothing of them, neither their totals nor their timed steps.
 *
 * @param actual person-hours
 * @param byTables person-hours by the tables as they were
 * @param byFit person-hours by rates fitted to the other folds
 * @param noise coefficient of variation of a job, as those folds have it
 * @param spread the same with what is not known of the rates
 */
record HeldOut(double[] actual, double[] byTables, double[] byFit, double[] noise, double[] spread) {
    private static final double LEAST_SPREAD = 1e-9;

    /**
     * A job's person-hours by rates and the noise that they leave.
     *
     * @param spread with what is not known of the rates, coefficient of variation
     */
    record Forecast(double hours, double noise, double spread) {}

    /** Fits once without the jobs of a fold, then foresees each of them. */
    @FunctionalInterface
    interface Fold {
        List<Forecast> foresee(List<Integer> held);
    }

    /** Every {@code folds}th job is in the same fold; folds are foreseen at once. */
    static HeldOut of(List<Integer> jobs, int folds, double[] actual, double[] byTables, Fold fold) {
        double[] byFit = new double[jobs.size()];
        double[] noise = new double[jobs.size()];
        double[] spread = new double[jobs.size()];
        IntStream.range(0, folds).parallel().forEach(first -> {
            List<Integer> places = IntStream.iterate(first, i -> i < jobs.size(), i -> i + folds)
                    .boxed()
                    .toList();
            List<Forecast> foreseen =
                    fold.foresee(places.stream().map(jobs::get).toList());
            for (int i = 0; i < places.size(); i++) {
                byFit[places.get(i)] = foreseen.get(i).hours();
                noise[places.get(i)] = foreseen.get(i).noise();
                spread[places.get(i)] = foreseen.get(i).spread();
            }
        });
        return new HeldOut(actual, byTables, byFit, noise, spread);
    }

    HeldOutError error(int folds) {
        int jobs = actual.length;
        double[] tables = squares(byTables);
        double[] fitted = squares(byFit);
        double[] gains =
                IntStream.range(0, jobs).mapToDouble(i -> tables[i] - fitted[i]).toArray();
        return new HeldOutError(
                folds,
                jobs,
                Math.sqrt(StatUtils.mean(tables)),
                Math.sqrt(StatUtils.mean(fitted)),
                hours(byTables),
                hours(byFit),
                StatUtils.mean(gains),
                new StandardDeviation().evaluate(gains) / Math.sqrt(jobs),
                places());
    }

    /** Of each job, by a lognormal with the foreseen mean and spread: the probability integral. */
    List<Double> places() {
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        return IntStream.range(0, actual.length)
                .mapToObj(i -> {
                    double variance = Math.log1p(Math.max(LEAST_SPREAD, spread[i] * spread[i]));
                    double log = Math.log(actual[i] / byFit[i]) + 0.5 * variance;
                    return normal.cumulativeProbability(log / Math.sqrt(variance));
                })
                .toList();
    }

    /** The log of a lognormal of mean 1 has mean −½ log(1 + noise²). */
    private double[] squares(double[] foreseen) {
        return IntStream.range(0, actual.length)
                .mapToDouble(i -> Math.log(actual[i] / foreseen[i]) + 0.5 * Math.log1p(noise[i] * noise[i]))
                .map(error -> error * error)
                .toArray();
    }

    private double hours(double[] foreseen) {
        return Math.sqrt(IntStream.range(0, actual.length)
                .mapToDouble(i -> Math.pow(actual[i] - foreseen[i], 2))
                .average()
                .orElseThrow());
    }
}
