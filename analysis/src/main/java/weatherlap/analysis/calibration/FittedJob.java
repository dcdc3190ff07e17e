package weatherlap.analysis.calibration;

import weatherlap.datasets.jobs.JobRecord;

/**
 * What a job took and what it should have taken, person-hours.
 *
 * @param tableHours by the tables as they were
 * @param fittedHours by the fitted rates
 * @param robustDeviations residual of the robust fit over its robust spread; 0 where all of the job was timed
 * @param outlier set aside by the fit
 */
public record FittedJob(
        JobRecord job, double tableHours, double fittedHours, double robustDeviations, boolean outlier) {
    public double actualHours() {
        return job.personHours().orElseThrow();
    }

    /** Actual less fitted, as a share of the fitted. */
    public double residualFraction() {
        return actualHours() / fittedHours - 1;
    }
}
