package weatherlap.analysis.calibration;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.jobs.JobWork;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.LabourStep;

/**
 * Job records as the rows of a regression on the steps.
 *
 * @param steps the columns
 */
record JobTable(List<LabourStep> steps, List<JobWork> works) {
    /** A job with less of it untimed has no total of its own to tell of. */
    private static final double TIMED_WHOLE = 0.05;
    /** Timed minutes and hours of a job timed whole agree within this, as a log: a tenth, for rounding (judgement). */
    private static final double AGREES = Math.log(1.1);

    static JobTable of(Assumptions assumptions, List<JobRecord> jobs) {
        return new JobTable(
                assumptions.steps(),
                jobs.stream().map(job -> JobWork.of(assumptions, job)).toList());
    }

    /**
     * A job's total as one row, less the steps that were timed.
     *
     * @param weights by step, over the minutes that the tables expect
     * @param observed minutes taken over the minutes expected
     */
    record TotalRow(double[] weights, double observed) {}

    /** Jobs that have hours, some work that was not timed, and hours left for it. */
    List<Integer> withTotals() {
        return withHours().stream()
                .filter(j -> !wasTimedWhole(works.get(j)) && !contradictory(j))
                .toList();
    }

    private static boolean wasTimedWhole(JobWork work) {
        return untimedMinutes(work) <= TIMED_WHOLE * work.expectedMinutes();
    }

    /** Timed minutes that leave none for the rest of the job, or are not the hours of a job that was timed whole. */
    boolean contradictory(int job) {
        JobWork work = works.get(job);
        if (work.job().stepMinutes().isEmpty()) {
            return false;
        }
        double taken = work.job().personHours().orElseThrow() * Units.MINUTES_PER_HOUR;
        double timed = timedMinutes(work.job());
        return wasTimedWhole(work) ? Math.abs(Math.log(timed / taken)) > AGREES : timed >= taken;
    }

    private static double timedMinutes(JobRecord job) {
        return job.stepMinutes().values().stream().mapToDouble(m -> m).sum();
    }

    /** The same jobs; timings that were set aside are as if never taken. */
    JobTable without(List<GrossTiming> timings) {
        Map<JobRecord, Set<String>> dropped = timings.stream()
                .collect(Collectors.groupingBy(
                        GrossTiming::job, Collectors.mapping(t -> t.step().id(), Collectors.toSet())));
        return new JobTable(
                steps,
                works.stream()
                        .map(work -> new JobWork(
                                work.job().without(dropped.getOrDefault(work.job(), Set.of())), work.weights()))
                        .toList());
    }

    List<Integer> withHours() {
        return IntStream.range(0, works.size())
                .filter(j -> works.get(j).job().personHours().isPresent())
                .boxed()
                .toList();
    }

    /** The other jobs, in a table with numbers of its own. */
    JobTable without(Set<Integer> jobs) {
        return new JobTable(
                steps,
                IntStream.range(0, works.size())
                        .filter(j -> !jobs.contains(j))
                        .mapToObj(works::get)
                        .toList());
    }

    private static double untimedMinutes(JobWork work) {
        Set<String> timed = work.job().stepMinutes().keySet();
        return work.weights().entrySet().stream()
                .filter(e -> !timed.contains(e.getKey().id()))
                .mapToDouble(e -> e.getValue() * e.getKey().minutes().mean())
                .sum();
    }

    private TotalRow total(int job) {
        JobWork work = works.get(job);
        Map<String, Double> timed = work.job().stepMinutes();
        double expected = untimedMinutes(work);
        double[] weights = steps.stream()
                .mapToDouble(step ->
                        timed.containsKey(step.id()) ? 0 : work.weights().getOrDefault(step, 0.0) / expected)
                .toArray();
        double taken = work.job().personHours().orElseThrow() * Units.MINUTES_PER_HOUR;
        double rest = taken - timedMinutes(work.job());
        return new TotalRow(weights, rest / expected);
    }

    /** One row for each of the jobs; without any, a row that says nothing. */
    RealMatrix design(List<Integer> jobs) {
        return jobs.isEmpty()
                ? MatrixUtils.createRealMatrix(1, steps.size())
                : MatrixUtils.createRealMatrix(
                        jobs.stream().map(job -> total(job).weights()).toArray(double[][]::new));
    }

    /** Minutes taken over minutes expected, for each of the jobs; without any, the zero of {@link #design}'s row. */
    RealVector observed(List<Integer> jobs) {
        return jobs.isEmpty()
                ? new ArrayRealVector(1)
                : new ArrayRealVector(
                        jobs.stream().mapToDouble(job -> total(job).observed()).toArray());
    }

    /** Person-hours of a job at given minutes of the steps. */
    double hours(int job, RealVector minutes) {
        Map<LabourStep, Double> weights = works.get(job).weights();
        double sum = 0;
        for (int s = 0; s < steps.size(); s++) {
            sum += weights.getOrDefault(steps.get(s), 0.0) * minutes.getEntry(s);
        }
        return Units.minutesToHours(sum);
    }

    /** Minutes for one unit of its driver, in ordinary conditions, of each job; NaN where the step was not timed. */
    double[] timed(LabourStep step) {
        return works.stream()
                .mapToDouble(work -> {
                    Double minutes = work.job().stepMinutes().get(step.id());
                    Double weight = work.weights().get(step);
                    return minutes == null || weight == null ? Double.NaN : minutes / weight;
                })
                .toArray();
    }

    /** How many of the jobs tell anything of a step. */
    int occurrences(LabourStep step, List<Integer> jobs) {
        Set<Integer> totals = new HashSet<>(jobs);
        return (int) IntStream.range(0, works.size())
                .filter(j -> works.get(j).weights().containsKey(step))
                .filter(j ->
                        totals.contains(j) || works.get(j).job().stepMinutes().containsKey(step.id()))
                .count();
    }
}
