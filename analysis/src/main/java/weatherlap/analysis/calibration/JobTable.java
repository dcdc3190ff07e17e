package weatherlap.analysis.calibration;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
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

    /** Jobs that have hours and some work that was not timed; empty for the others. */
    List<Integer> withTotals() {
        return IntStream.range(0, works.size())
                .filter(j -> works.get(j).job().personHours().isPresent())
                .filter(j -> untimedMinutes(works.get(j)) > 0.05 * works.get(j).expectedMinutes())
                .boxed()
                .toList();
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
        double rest = taken - timed.values().stream().mapToDouble(m -> m).sum();
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
