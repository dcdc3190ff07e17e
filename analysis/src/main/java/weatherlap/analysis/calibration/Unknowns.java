package weatherlap.analysis.calibration;

import java.util.Arrays;

/**
 * What a fit looks for: the minutes of each step on a day, the log of each crew's pace, the drift of the log a year.
 *
 * @param drifts whether a drift is looked for
 * @param day that the minutes are those of, years after the last job, 0 or less
 */
record Unknowns(int steps, int crews, boolean drifts, double day) {
    /** Minutes of the middle of the jobs, which are known apart from the drift as those of the last day are not. */
    static Unknowns of(JobTable table, double halfLife) {
        double weights = 0;
        double years = 0;
        for (JobLine line : table.lines()) {
            double weight = Totals.recency(line, halfLife);
            weights += weight;
            years += weight * line.years();
        }
        return new Unknowns(
                table.steps().size(), table.crews().size(), table.span() > 0, years / Math.max(1e-9, weights));
    }

    Unknowns onTheLastDay() {
        return new Unknowns(steps, crews, drifts, 0);
    }

    int count() {
        return steps + crews + (drifts ? 1 : 0);
    }

    int crew(int place) {
        return steps + place;
    }

    int drift() {
        return steps + crews;
    }

    /** Log of the pace at which a job is done. */
    double pace(JobLine line, double[] guess) {
        return (line.crew() < 0 ? 0 : guess[crew(line.crew())]) + (drifts ? guess[drift()] * (line.years() - day) : 0);
    }

    /** The first so many places of steps, then those of what makes the pace of a job. */
    int[] columns(JobLine line, int[] placesOfSteps, int count) {
        int[] columns = Arrays.copyOf(placesOfSteps, count + paceCount(line));
        int next = count;
        if (line.crew() >= 0) {
            columns[next++] = crew(line.crew());
        }
        if (drifts) {
            columns[next] = drift();
        }
        return columns;
    }

    /** The first so many weights of steps, then those of the pace. */
    double[] weights(JobLine line, double[] weightsOfSteps, int count) {
        double[] weights = Arrays.copyOf(weightsOfSteps, count + paceCount(line));
        int next = count;
        if (line.crew() >= 0) {
            weights[next++] = 1;
        }
        if (drifts) {
            weights[next] = line.years() - day;
        }
        return weights;
    }

    private int paceCount(JobLine line) {
        return (line.crew() >= 0 ? 1 : 0) + (drifts ? 1 : 0);
    }
}
