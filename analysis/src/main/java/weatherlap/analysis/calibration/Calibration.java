package weatherlap.analysis.calibration;

import java.util.List;
import java.util.Optional;
import weatherlap.sim.assumptions.Assumptions;

/**
 * Rates fitted to job records.
 *
 * @param calibrated the assumptions with the fitted rates in place of the old ones
 * @param steps in table order
 * @param jobs with person-hours, in the order of the records
 * @param noise coefficient of variation of a job about its fitted minutes, fraction
 * @param heldOut empty where there are too few jobs to hold any out
 * @param skipped ids of jobs that could not be used: neither hours nor a timed step
 */
public record Calibration(
        Assumptions calibrated,
        List<StepFit> steps,
        List<FittedJob> jobs,
        double noise,
        Optional<HeldOutError> heldOut,
        List<String> skipped) {
    public Calibration {
        steps = List.copyOf(steps);
        jobs = List.copyOf(jobs);
        skipped = List.copyOf(skipped);
    }

    public List<FittedJob> outliers() {
        return jobs.stream().filter(FittedJob::outlier).toList();
    }
}
