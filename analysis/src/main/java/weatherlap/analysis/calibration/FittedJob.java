package weatherlap.analysis.calibration;

import weatherlap.datasets.jobs.JobRecord;
import weatherlap.sim.Units;

/**
 * What a job took and what it should have taken, person-hours.
 *
 * @param tableHours by the tables as they were
 * @param fittedHours by the fitted rates
 * @param restHours of these, for the steps that were not timed
 * @param robustDeviations log residual of the robust fit over its robust spread; 0 where all of the job was timed
 * @param aside whether its hours were set aside by the fit, and for what
 */
public record FittedJob(
        JobRecord job, double tableHours, double fittedHours, double restHours, double robustDeviations, Aside aside) {
    private static final int LARGEST_CREW = 3;

    /** Why the hours of a job are not fitted. */
    public enum Aside {
        /** They are. */
        NOT,
        /** Its timed minutes contradict them. */
        TIMINGS,
        /** Less its timed minutes they are too far from what the steps that were not timed take in other jobs. */
        REST,
        /** They are too far from what such a job takes. */
        WHOLE
    }

    public boolean outlier() {
        return aside != Aside.NOT;
    }

    public double actualHours() {
        return job.personHours().orElseThrow();
    }

    /** Of the steps that were timed. */
    public double timedHours() {
        return Units.minutesToHours(
                job.stepMinutes().values().stream().mapToDouble(m -> m).sum());
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
