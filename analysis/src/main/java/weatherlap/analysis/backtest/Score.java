package weatherlap.analysis.backtest;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;

/**
 * How well one of them foresaw one amount, over all jobs.
 *
 * @param score mean CRPS, in the unit of the amount
 * @param gain mean over the jobs of the average's score less this one's; above 0 where this one foresees better
 * @param gainError its standard error from job to job. Folds share jobs, so it is a little low
 * @param came sum of what came
 * @param foresaw sum of the means foreseen
 * @param within50 share of the jobs within the band that was given 50 %
 * @param within80 likewise 80 %
 * @param within90 likewise 90 %
 * @param width sharpness: mean width of the 90 % band over the mean foreseen; 0: one number
 * @see "Gneiting, Balabdaoui, Raftery 2007, Journal of the Royal Statistical Society B 69(2) (sharpness subject to calibration); from memory"
 */
public record Score(
        JobAmount amount,
        Seer seer,
        int jobs,
        double score,
        double gain,
        double gainError,
        double came,
        double foresaw,
        double within50,
        double within80,
        double within90,
        double width) {
    /** One-sided; 5 % false alarms a side is convention. */
    private static final double SURE = 0.95;

    /** Whether it foresees better than the average a window. */
    public enum Verdict {
        BETTER,
        WORSE,
        /** By no more than chance makes. */
        NEITHER
    }

    /** @param trials of one amount, at least one */
    static Score of(List<Trial> trials, Seer seer) {
        double[] gains = trials.stream()
                .mapToDouble(trial -> trial.score(Seer.AVERAGE) - trial.score(seer))
                .toArray();
        double foresaw = sum(trials, trial -> trial.by(seer).mean());
        double width = sum(
                trials, trial -> trial.by(seer).quantile(0.95) - trial.by(seer).quantile(0.05));
        int n = trials.size();
        return new Score(
                trials.get(0).amount(),
                seer,
                n,
                sum(trials, trial -> trial.score(seer)) / n,
                StatUtils.mean(gains),
                n < 2 ? 0 : new StandardDeviation().evaluate(gains) / Math.sqrt(n),
                sum(trials, Trial::came),
                foresaw,
                within(trials, seer, 0.5),
                within(trials, seer, 0.8),
                within(trials, seer, 0.9),
                foresaw == 0 ? 0 : width / foresaw);
    }

    private static double sum(List<Trial> trials, ToDoubleFunction<Trial> of) {
        return trials.stream().mapToDouble(of).sum();
    }

    private static double within(List<Trial> trials, Seer seer, double share) {
        double tail = (1 - share) / 2;
        return trials.stream()
                        .filter(trial -> trial.came() >= trial.by(seer).quantile(tail)
                                && trial.came() <= trial.by(seer).quantile(1 - tail))
                        .count()
                / (double) trials.size();
    }

    /** What came over what was foreseen, less 1. */
    public double bias() {
        return foresaw == 0 ? 0 : came / foresaw - 1;
    }

    /** By a paired t test on the jobs' scores against those of the average. */
    public Verdict verdict() {
        double limit = gainError * new TDistribution(null, Math.max(1, jobs - 1)).inverseCumulativeProbability(SURE);
        if (gain > limit) {
            return Verdict.BETTER;
        }
        return gain < -limit ? Verdict.WORSE : Verdict.NEITHER;
    }
}
