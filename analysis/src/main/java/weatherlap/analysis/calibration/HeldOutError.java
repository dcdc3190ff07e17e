package weatherlap.analysis.calibration;

import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * Error on jobs that a fit has not seen, outliers left out. The error of a job is the log of actual over expected hours, put right by
 * half the log-variance of a job, as both forecasts are means; too fast by a factor weighs as much as too slow by the same.
 *
 * @param folds the jobs were split into
 * @param tables root mean square of the errors of the tables as they were, log
 * @param fitted likewise by rates fitted to the other folds
 * @param tablesHours root mean square in person-hours
 * @param fittedHours likewise
 * @param gain mean over the jobs of the tables' squared error less the fitted rates'; above 0 where the fitted rates foresee better
 * @param gainError its standard error from job to job. Folds share jobs, so it is a little low
 * @param places of each job within what was foreseen of it by the fitted rates, 0 to 1
 * @see "Bengio, Grandvalet 2004, Journal of Machine Learning Research 5 (why no unbiased one exists); from memory"
 */
public record HeldOutError(
        int folds,
        int jobs,
        double tables,
        double fitted,
        double tablesHours,
        double fittedHours,
        double gain,
        double gainError,
        List<Double> places) {
    /** One-sided; 5 % false alarms a side is convention. */
    private static final double SURE = 0.95;

    public HeldOutError {
        places = List.copyOf(places);
    }

    /** Which rates foresee unseen jobs better. */
    public enum Verdict {
        FITTED,
        TABLES,
        /** Neither by more than chance makes. */
        EITHER
    }

    /** By a paired t test on the jobs' scores: swapping fit and tables swaps the verdict. */
    public Verdict verdict() {
        double limit = gainError * new TDistribution(null, Math.max(1, jobs - 1)).inverseCumulativeProbability(SURE);
        if (gain > limit) {
            return Verdict.FITTED;
        }
        return gain < -limit ? Verdict.TABLES : Verdict.EITHER;
    }
}
