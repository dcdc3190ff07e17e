package weatherlap.analysis.callbacks;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import weatherlap.datasets.jobs.JobHouse;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.OpeningResult;
import weatherlap.sim.run.Simulator;

/**
 * Leak damage that the model expects at the windows of a job, by years since the work: −ln(1 − P) of the chance of damage within 2, 5,
 * 10, 20 and 30 years, mean over the windows of the {@link JobHouse} of its facts, on straight lines between. Jobs of equal facts are
 * simulated once.
 */
public final class ExpectedCalls {
    private static final List<Integer> YEARS = List.of(2, 5, 10, 20, 30);
    private static final double MOST_SURE = 1 - 1e-9;

    private final List<Simulator> simulators;
    private final Map<Map<Fact, String>, Map<Method, LaggedExposure>> byFacts = new HashMap<>();

    /** @param draws a house, 1 or more */
    public ExpectedCalls(Assumptions assumptions, RainClimate climate, int draws) {
        simulators = YEARS.stream()
                .map(years -> simulator(assumptions, climate, years, draws))
                .toList();
    }

    static Simulator simulator(Assumptions assumptions, RainClimate climate, int years, int draws) {
        return new Simulator(
                assumptions.with(assumptions.scenario().with(Scalar.HORIZON_YEARS, years)),
                climate,
                assumptions.scenario().choice(Choice.SAMPLING, Sampling.class),
                draws,
                (long) assumptions.scenario().value(Scalar.SEED));
    }

    /**
     * Damage expected at one window of a job, as if it were reported at once. A method that such a wall is not open to, such as a flange
     * behind brick, is taken for the one that leaves the frame, or takes it out, as it does.
     */
    public LaggedExposure opening(JobRecord job) {
        Map<Method, LaggedExposure> known = byFacts.computeIfAbsent(JobHouse.facts(job), this::simulated);
        LaggedExposure own = known.get(job.method());
        return own != null
                ? own
                : known.entrySet().stream()
                        .filter(e -> e.getKey().keepsOldFrame() == job.method().keepsOldFrame())
                        .findFirst()
                        .orElseThrow()
                        .getValue();
    }

    /** The same at all windows of a job. */
    public LaggedExposure of(JobRecord job) {
        return opening(job).times(job.openings());
    }

    private Map<Method, LaggedExposure> simulated(Map<Fact, String> facts) {
        House house = JobHouse.of(facts);
        List<Map<Method, Double>> byYears =
                simulators.stream().map(s -> anOpening(s.simulate(house))).toList();
        Map<Method, LaggedExposure> exposures = new EnumMap<>(Method.class);
        for (Method method : byYears.get(0).keySet()) {
            List<Double> knots = new ArrayList<>(List.of(0.0));
            List<Double> expected = new ArrayList<>(List.of(0.0));
            for (int i = 0; i < YEARS.size(); i++) {
                knots.add((double) YEARS.get(i));
                expected.add(Math.max(expected.get(i), byYears.get(i).get(method)));
            }
            exposures.put(method, new LaggedExposure(knots, expected));
        }
        return exposures;
    }

    /** Damage expected at one window within the horizon, by method: mean over the windows of a house. */
    static Map<Method, Double> anOpening(HouseResult house) {
        return house.openings().stream()
                .collect(Collectors.groupingBy(
                        OpeningResult::method,
                        () -> new EnumMap<>(Method.class),
                        Collectors.averagingDouble(
                                opening -> -Math.log1p(-Math.min(MOST_SURE, opening.leakProbability())))));
    }
}
