package weatherlap.datasets.jobs;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.labour.LabourLine;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.work.WorkTakeoff;

/**
 * The work behind jobs. Where the house was measured, it is taken off the house as a comparison would, for the share of its windows that
 * were done, at the day's temperature. Elsewhere it is the mean over draws of the facts that the record leaves out, with their spread.
 * What a record counted itself stands over both.
 */
public final class JobTakeoff {
    /** Draws of a job; a prime, so that each fact runs through its values in an order of its own. */
    private static final int DRAWS = 17;
    /** Of more jobs each is drawn less often. */
    private static final int FEWER_DRAWS = 5;

    private static final int MANY_JOBS = 2000;
    private static final double GOLDEN = 0.6180339887498949;

    private final Assumptions assumptions;
    private final JobHouses houses;
    private final BlankFacts blanks;
    private final int draws;

    public JobTakeoff(Assumptions assumptions, List<JobRecord> jobs, JobHouses houses) {
        this.assumptions = assumptions;
        this.houses = houses;
        blanks = BlankFacts.of(assumptions, jobs);
        draws = jobs.size() > MANY_JOBS ? FEWER_DRAWS : DRAWS;
    }

    public JobWork of(JobRecord job) {
        if (houses.isMeasured(job)) {
            return measured(job);
        }
        Set<Fact> blank = blanks.of(job);
        return blank.isEmpty() ? JobWork.of(assumptions, job) : filledIn(job, blank);
    }

    /** Facts that count and that neither the record nor a measured house tells. */
    public Set<Fact> filledIn(JobRecord job) {
        return houses.isMeasured(job) ? Set.of() : blanks.of(job);
    }

    /** Whether the house of a job was measured. */
    public boolean isMeasured(JobRecord job) {
        return houses.isMeasured(job);
    }

    private JobWork filledIn(JobRecord job, Set<Fact> blank) {
        double shift = Math.floorMod(job.id().hashCode(), 1 << 20) / (double) (1 << 20);
        List<JobWork> drawn = IntStream.range(0, draws)
                .mapToObj(draw -> JobWork.of(assumptions, job, facts(job, blank, draw, shift)))
                .toList();
        double[] minutes = drawn.stream().mapToDouble(JobWork::expectedMinutes).toArray();
        double mean = Arrays.stream(minutes).average().orElseThrow();
        double squares = Arrays.stream(minutes).map(m -> Math.pow(m - mean, 2)).sum();
        Map<LabourStep, Double> weights = new LinkedHashMap<>();
        assumptions.steps().forEach(step -> {
            double[] own = drawn.stream()
                    .mapToDouble(work -> work.weights().getOrDefault(step, 0.0))
                    .toArray();
            double sum = Arrays.stream(own).sum();
            if (sum > 0) {
                // a step that was timed was done
                long done = job.stepMinutes().containsKey(step.id())
                        ? Arrays.stream(own).filter(w -> w > 0).count()
                        : draws;
                weights.put(step, sum / done);
            }
        });
        return new JobWork(job, weights, Math.sqrt(squares / (draws - 1)) / mean);
    }

    /** Evenly over the shares of every fact, each shifted by a place of the job's own. */
    private Map<Fact, String> facts(JobRecord job, Set<Fact> blank, int draw, double shift) {
        Map<Fact, String> facts = new EnumMap<>(JobWork.facts(job));
        for (Fact fact : blank) {
            int turn = 1 + fact.ordinal() % (draws - 1);
            double place = (draw * turn % draws + shift * (1 + GOLDEN * fact.ordinal()) % 1) / draws;
            facts.put(fact, blanks.drawn(fact, job.method(), place));
        }
        return facts;
    }

    private JobWork measured(JobRecord job) {
        OptionalDouble day = job.temperatureF();
        Assumptions then = day.isEmpty()
                ? assumptions
                : assumptions.with(assumptions.scenario().with(Scalar.TEMPERATURE_F, day.getAsDouble()));
        WorkTakeoff work = HouseTakeoff.work(houses.of(job), job.method(), then);
        double share = job.openings() / (double) houses.of(job).openingCount();
        Map<String, Double> byStep = new LinkedHashMap<>();
        Map<Driver, Double> units = units(work.lines());
        for (LabourLine line : work.lines()) {
            Driver driver = line.step().driver();
            double own = driver == Driver.JOB ? 1 : share;
            double kept = Optional.of(job.counted().of(driver))
                    .filter(q -> q.isPresent() && units.getOrDefault(driver, 0.0) > 0)
                    .map(q -> q.getAsDouble() / units.get(driver))
                    .orElse(own);
            byStep.merge(line.step().id(), kept * line.weight(), Double::sum);
        }
        Map<LabourStep, Double> weights = new LinkedHashMap<>();
        assumptions.steps().stream()
                .filter(step -> byStep.getOrDefault(step.id(), 0.0) > 0)
                .forEach(step -> weights.put(step, byStep.get(step.id())));
        return new JobWork(job, weights, 0);
    }

    /** How much of each driver a house has: as much as the step with most of it. */
    private static Map<Driver, Double> units(List<LabourLine> lines) {
        Map<LabourStep, Double> byStep = new LinkedHashMap<>();
        lines.forEach(line -> byStep.merge(line.step(), line.quantity(), Double::sum));
        Map<Driver, Double> most = new EnumMap<>(Driver.class);
        byStep.forEach((step, quantity) -> most.merge(step.driver(), quantity, Math::max));
        return most;
    }
}
