package weatherlap.analysis.calibration;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.math3.linear.RealVector;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.jobs.JobWork;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.LabourStep;

/**
 * A job as the fit reads it.
 *
 * @param steps that stood behind it, as places in the table, ascending
 * @param weights by which the minutes of each are multiplied
 * @param means minutes that the tables expect for one unit, of every step of the table
 * @param timed minutes taken for one unit of the driver of each, in ordinary conditions; NaN where it was not timed; empty: none was
 * @param spread coefficient of variation of the expected minutes, for what the record leaves out
 * @param crew its place among the crews; -1: not known
 * @param years after the last job, 0 or less
 */
record JobLine(
        JobRecord job,
        int[] steps,
        double[] weights,
        double[] means,
        double[] timed,
        double spread,
        int crew,
        double years) {
    private static final double[] NONE = {};
    /** A job with less of it untimed has no total of its own to tell of. */
    private static final double TIMED_WHOLE = 0.05;
    /** Timed minutes and hours of a job agree within this, as a log: a tenth, for rounding (judgement). */
    private static final double AGREES = Math.log(1.1);

    /**
     * @param places of the steps in the table, by id
     * @param means minutes for one unit of each of them
     */
    static JobLine of(JobWork work, Map<String, Integer> places, double[] means, int crew, double years) {
        Map<String, Double> taken = work.job().stepMinutes();
        int[] steps = new int[work.weights().size()];
        double[] weights = new double[steps.length];
        double[] timed = new double[steps.length];
        int next = 0;
        boolean any = false;
        for (Map.Entry<LabourStep, Double> entry : work.weights().entrySet()) {
            Double minutes = taken.get(entry.getKey().id());
            steps[next] = places.get(entry.getKey().id());
            weights[next] = entry.getValue();
            timed[next] = minutes == null ? Double.NaN : minutes / weights[next];
            any |= minutes != null;
            next++;
        }
        return new JobLine(work.job(), steps, weights, means, any ? timed : NONE, work.spread(), crew, years);
    }

    /** The same with this array of steps, which holds the same: jobs of a kind share one. */
    JobLine sharing(int[] same) {
        return new JobLine(job, same, weights, means, timed, spread, crew, years);
    }

    /** The same without some of its timings, by step id; they count as never taken. */
    JobLine without(Set<String> ids, List<LabourStep> table) {
        double[] kept = timed.clone();
        for (int i = 0; i < kept.length; i++) {
            kept[i] = ids.contains(table.get(steps[i]).id()) ? Double.NaN : kept[i];
        }
        return new JobLine(job.without(ids), steps, weights, means, kept, spread, crew, years);
    }

    boolean wasTimed(int place) {
        return timed.length > 0 && !Double.isNaN(timed[place]);
    }

    int timings() {
        int timings = 0;
        for (int i = 0; i < timed.length; i++) {
            timings += wasTimed(i) ? 1 : 0;
        }
        return timings;
    }

    double expectedMinutes() {
        double sum = 0;
        for (int i = 0; i < steps.length; i++) {
            sum += weights[i] * means[steps[i]];
        }
        return sum;
    }

    double untimedMinutes() {
        double sum = 0;
        for (int i = 0; i < steps.length; i++) {
            sum += wasTimed(i) ? 0 : weights[i] * means[steps[i]];
        }
        return sum;
    }

    double takenMinutes() {
        return job.personHours().orElseThrow() * Units.MINUTES_PER_HOUR;
    }

    double timedMinutes() {
        double sum = 0;
        for (double minutes : job.stepMinutes().values()) {
            sum += minutes;
        }
        return sum;
    }

    boolean hasHours() {
        return job.personHours().isPresent();
    }

    /** A step that the record leaves open and that was not timed was not done, where timings and hours agree. */
    private boolean wasTimedWhole() {
        return untimedMinutes() <= TIMED_WHOLE * expectedMinutes() || hasTimings() && spread > 0 && agrees();
    }

    private boolean hasTimings() {
        return !job.stepMinutes().isEmpty();
    }

    private boolean agrees() {
        return agreesWith(timedMinutes());
    }

    private boolean agreesWith(double minutes) {
        return Math.abs(Math.log(minutes / takenMinutes())) <= AGREES;
    }

    /**
     * Whether the hours agree with the timed minutes and what is foreseen of the rest: the rest of a job that was timed but for a little
     * is a small difference of two numbers, far off where the job is not.
     *
     * @param residual log of the rest over what is foreseen of it
     */
    boolean agreesInAll(double residual) {
        return agreesWith(timedMinutes() + (takenMinutes() - timedMinutes()) * Math.exp(-residual));
    }

    /** Timed minutes that leave none for the rest of the job, or are not the hours of a job that was timed whole. */
    boolean isContradictory() {
        return hasHours() && hasTimings() && (wasTimedWhole() ? !agrees() : timedMinutes() >= takenMinutes());
    }

    /** Hours, some work that was not timed, and hours left for it. */
    boolean hasTotal() {
        return hasHours() && !wasTimedWhole() && !isContradictory();
    }

    /** Person-hours of an ordinary crew at given minutes of the steps. */
    double hours(RealVector rates) {
        double sum = 0;
        for (int i = 0; i < steps.length; i++) {
            sum += weights[i] * rates.getEntry(steps[i]);
        }
        return Units.minutesToHours(sum);
    }

    /** Of these, the hours of steps that were not timed. */
    double restHours(RealVector rates) {
        double sum = 0;
        for (int i = 0; i < steps.length; i++) {
            sum += wasTimed(i) ? 0 : weights[i] * rates.getEntry(steps[i]);
        }
        return Units.minutesToHours(sum);
    }
}
