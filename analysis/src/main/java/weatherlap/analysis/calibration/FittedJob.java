package weatherlap.analysis.calibration;

import weatherlap.datasets.jobs.JobRecord;

/**
 * What a job took and what it should have taken, person-hours.
 *
 * @param tableHours by the tables as they were
 * @param fittedHours by the fitted rates
 * @param robustDeviations log residual of the robust fit over its robust spread; 0 where all of the job was timed
 * @param outlier set aside by the fit
 */
public record FittedJob(
        JobRecord job, double tableHours, double fittedHours, double robustDeviations, boolean outlier) {
    private static final int LARGEST_CREW = 3;

    public double actualHours() {
        return job.personHours().orElseThrow();
    }

    /** Actual less fitted, as a share of the fitted. */
    public double residualFraction() {
        return actualHours() / fittedHours - 1;
    }

    /** Log of actual over fitted hours: half is as far from 0 as double. */
    public double logResidual() {
        return Math.log(actualHours() / fittedHours);
    }

    /** Crew by whose size the fitted hours must be divided to come to the actual ones, nearest on the log scale; 1: none, or too many. */
    int clockHoursOf() {
        double square = Math.exp(-2 * logResidual());
        int people = 1;
        while (people <= LARGEST_CREW && people * (people + 1) < square) {
            people++;
        }
        return people <= LARGEST_CREW ? people : 1;
    }
}
