package weatherlap.analysis.calibration;

import java.nio.IntBuffer;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;
import weatherlap.datasets.jobs.JobHouses;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.datasets.jobs.JobTakeoff;
import weatherlap.datasets.jobs.JobWork;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.LabourStep;

/**
 * Job records as a fit reads them.
 *
 * @param steps of the tables
 * @param crews that have a pace of their own, those with most jobs first; none where there is but one
 * @param span years from the first day kept to the last
 */
record JobTable(List<LabourStep> steps, List<JobLine> lines, List<String> crews, double span) {
    /** Crews with fewer jobs than these many others have no pace of their own. */
    private static final int MOST_CREWS = 30;

    private static final double DAYS_PER_YEAR = 365.25;

    static JobTable of(Assumptions assumptions, List<JobRecord> jobs) {
        return of(assumptions, jobs, new JobTakeoff(assumptions, jobs, JobHouses.unmeasured()));
    }

    static JobTable of(Assumptions assumptions, List<JobRecord> jobs, JobTakeoff takeoff) {
        return of(assumptions, jobs, jobs.stream().map(takeoff::of));
    }

    /** Jobs whose work is taken off already. */
    static JobTable ofWork(Assumptions assumptions, List<JobWork> works) {
        return of(assumptions, works.stream().map(JobWork::job).toList(), works.stream());
    }

    /** @param works of the jobs, in their order, each let go once it is read */
    private static JobTable of(Assumptions assumptions, List<JobRecord> jobs, Stream<JobWork> works) {
        List<LabourStep> steps = assumptions.steps();
        double[] means = steps.stream().mapToDouble(s -> s.minutes().mean()).toArray();
        Map<String, Integer> places = new HashMap<>();
        steps.forEach(step -> places.put(step.id(), places.size()));
        List<String> crews = crews(jobs);
        double[] days = jobs.stream()
                .flatMap(job -> job.date().stream())
                .mapToDouble(LocalDate::toEpochDay)
                .sorted()
                .toArray();
        double last = days.length == 0 ? 0 : days[days.length - 1];
        double middle = days.length == 0 ? 0 : days[days.length / 2];
        Map<IntBuffer, int[]> shared = new HashMap<>();
        List<JobLine> lines = works.map(work -> {
                    JobRecord job = work.job();
                    double day = job.date()
                            .map(LocalDate::toEpochDay)
                            .map(d -> (double) d)
                            .orElse(middle);
                    int crew = job.crew().map(crews::indexOf).orElse(-1);
                    JobLine line = JobLine.of(work, places, means, crew, (day - last) / DAYS_PER_YEAR);
                    return line.sharing(shared.computeIfAbsent(IntBuffer.wrap(line.steps()), IntBuffer::array));
                })
                .toList();
        return new JobTable(steps, lines, crews, days.length == 0 ? 0 : (last - days[0]) / DAYS_PER_YEAR);
    }

    private static List<String> crews(List<JobRecord> jobs) {
        Map<String, Long> counts = jobs.stream()
                .flatMap(job -> job.crew().stream())
                .collect(Collectors.groupingBy(crew -> crew, Collectors.counting()));
        return counts.size() < 2
                ? List.of()
                : counts.entrySet().stream()
                        .sorted(Comparator.<Map.Entry<String, Long>>comparingLong(e -> -e.getValue())
                                .thenComparing(Map.Entry::getKey))
                        .limit(MOST_CREWS)
                        .map(Map.Entry::getKey)
                        .toList();
    }

    /**
     * Jobs that have hours, some work that was not timed, and hours left for it; those of a method together, so that the steps of other
     * methods cost the triangle of their equations nothing.
     */
    List<Integer> withTotals() {
        return IntStream.range(0, lines.size())
                .filter(j -> lines.get(j).hasTotal())
                .boxed()
                .sorted(Comparator.comparing(j -> lines.get(j).job().method()))
                .toList();
    }

    List<Integer> withHours() {
        return IntStream.range(0, lines.size())
                .filter(j -> lines.get(j).hasHours())
                .boxed()
                .toList();
    }

    /** The same jobs; timings that were set aside are as if never taken. */
    JobTable without(List<GrossTiming> timings) {
        Map<JobRecord, Set<String>> dropped = timings.stream()
                .collect(Collectors.groupingBy(
                        GrossTiming::job, Collectors.mapping(t -> t.step().id(), Collectors.toSet())));
        return new JobTable(
                steps,
                lines.stream()
                        .map(line -> Optional.ofNullable(dropped.get(line.job()))
                                .map(ids -> line.without(ids, steps))
                                .orElse(line))
                        .toList(),
                crews,
                span);
    }

    /** What the tables expect of each step, min. */
    RealVector means() {
        return new ArrayRealVector(
                steps.stream().mapToDouble(s -> s.minutes().mean()).toArray());
    }

    /** How uncertain the tables are of each. A step whose three points are one is given a thousandth of itself to move. */
    RealVector variances() {
        return new ArrayRealVector(steps.stream()
                .mapToDouble(step -> {
                    double least = 1e-3 * Math.max(1e-3, step.minutes().mean());
                    return Math.max(step.minutes().variance(), least * least);
                })
                .toArray());
    }

    /** Minutes for one unit of its driver, in ordinary conditions, of each job; NaN where the step was not timed. */
    double[] timed(int step) {
        return lines.stream()
                .mapToDouble(line -> {
                    int place = line.timed().length == 0 ? -1 : Arrays.binarySearch(line.steps(), step);
                    return place < 0 ? Double.NaN : line.timed()[place];
                })
                .toArray();
    }

    /** How many jobs tell anything of each step. */
    int[] occurrences(Set<Integer> totals) {
        int[] counts = new int[steps.size()];
        for (int j = 0; j < lines.size(); j++) {
            JobLine line = lines.get(j);
            for (int i = 0; i < line.steps().length; i++) {
                counts[line.steps()[i]] += totals.contains(j) || line.wasTimed(i) ? 1 : 0;
            }
        }
        return counts;
    }
}
