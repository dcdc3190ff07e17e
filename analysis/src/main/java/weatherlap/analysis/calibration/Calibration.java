package weatherlap.analysis.calibration;

import java.util.List;
import java.util.Optional;
import weatherlap.sim.assumptions.Assumptions;

/**
 * Rates fitted to job records.
 *
 * @param calibrated the assumptions with the fitted rates in place of the old ones: those of an ordinary crew on the day of the last job
 * @param steps in table order
 * @param jobs with person-hours, in the order of the records
 * @param noise coefficient of variation of a job about its fitted minutes, fraction
 * @param crews paces of the crews, those with most jobs first; empty where there are not two
 * @param drift empty where the records hold no two days
 * @param filledIn what records left out
 * @param usdPerMinute what a minute of each step's rate makes in labor of an average job, USD, in table order
 * @param timeNext steps to time, those worth most first
 * @param changes of the rates since an earlier fit, the surest first; empty where none was named
 * @param heldOut empty where there are too few jobs to hold any out
 * @param skipped ids of jobs that could not be used: neither hours nor a timed step
 * @param grossTimings timings that were set aside; their steps count as not timed in those jobs
 */
public record Calibration(
        Assumptions calibrated,
        List<StepFit> steps,
        List<FittedJob> jobs,
        double noise,
        List<CrewPace> crews,
        Optional<Drift> drift,
        FilledIn filledIn,
        List<Double> usdPerMinute,
        List<TimeNext> timeNext,
        List<RateChange> changes,
        Optional<HeldOutError> heldOut,
        List<String> skipped,
        List<GrossTiming> grossTimings) {
    /** Fewer jobs at the same fraction are no cluster. */
    private static final int CLUSTER = 2;

    public Calibration {
        steps = List.copyOf(steps);
        jobs = List.copyOf(jobs);
        crews = List.copyOf(crews);
        usdPerMinute = List.copyOf(usdPerMinute);
        timeNext = List.copyOf(timeNext);
        changes = List.copyOf(changes);
        skipped = List.copyOf(skipped);
        grossTimings = List.copyOf(grossTimings);
    }

    public List<FittedJob> outliers() {
        return jobs.stream().filter(FittedJob::outlier).toList();
    }

    /**
     * Jobs set aside that took about the fitted hours over so many people: hours of the clock put down for person-hours, most likely.
     * Empty unless two or more did.
     *
     * @param people of a crew, 2 or more
     */
    public List<FittedJob> clockHours(int people) {
        List<FittedJob> jobs =
                outliers().stream().filter(job -> people == job.clockHoursOf()).toList();
        return jobs.size() < CLUSTER ? List.of() : jobs;
    }
}
