package weatherlap.analysis.callbacks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import weatherlap.datasets.jobs.JobHouses;
import weatherlap.datasets.jobs.JobRecord;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.OpeningExposure;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.run.LeakSimulator;

/**
 * Leak damage that the model expects at the windows of a job, by years since the work: −ln(1 − P) of the chance of damage within 2, 5,
 * 10, 20 and 30 years, mean over the windows of its house, on straight lines between. A house is simulated once for each method.
 */
public final class ExpectedCalls {
    private static final List<Integer> YEARS = List.of(2, 5, 10, 20, 30);
    private static final List<Double> KNOTS = List.of(0.0, 2.0, 5.0, 10.0, 20.0, 30.0);

    private final JobHouses houses;
    private final Assumptions assumptions;
    private final RainClimate climate;
    private final List<HouseDamage> byYears;
    private final Map<House, List<OpeningExposure>> rain = new ConcurrentHashMap<>();
    private final Map<Work, Damage> known = new ConcurrentHashMap<>();

    private record Work(House house, Method method) {}

    /**
     * Damage expected, as if it were reported at once.
     *
     * @param all of every fault
     * @param byGroup the same of those of a group; they sum to it
     */
    public record Damage(LaggedExposure all, Map<FaultGroup, LaggedExposure> byGroup) {
        public Damage {
            byGroup = Map.copyOf(byGroup);
        }

        Damage times(double factor) {
            Map<FaultGroup, LaggedExposure> groups = new EnumMap<>(FaultGroup.class);
            byGroup.forEach((group, exposure) -> groups.put(group, exposure.times(factor)));
            return new Damage(all.times(factor), groups);
        }
    }

    /** @param draws a house, 1 or more */
    public ExpectedCalls(JobHouses houses, Assumptions assumptions, RainClimate climate, int draws) {
        this.houses = houses;
        this.assumptions = assumptions;
        this.climate = climate;
        byYears = YEARS.stream()
                .map(years -> new HouseDamage(assumptions, years, draws))
                .toList();
    }

    /** At all windows of a job, whose method its house is open to. */
    public Damage of(JobRecord job) {
        Work work = new Work(houses.of(job), job.method());
        return known.computeIfAbsent(work, this::simulated).times(job.openings());
    }

    private Damage simulated(Work work) {
        List<OpeningExposure> falling =
                rain.computeIfAbsent(work.house(), house -> LeakSimulator.rain(house, climate, assumptions));
        Map<FaultGroup, double[]> damage = new EnumMap<>(FaultGroup.class);
        Arrays.stream(FaultGroup.values()).forEach(group -> damage.put(group, new double[KNOTS.size()]));
        for (int y = 0; y < YEARS.size(); y++) {
            int knot = y + 1;
            Map<FaultGroup, Double> now = byYears.get(y).of(work.house(), work.method(), falling);
            damage.forEach((group, at) -> at[knot] = Math.max(at[knot - 1], now.getOrDefault(group, 0.0)));
        }
        double[] sum = new double[KNOTS.size()];
        Map<FaultGroup, LaggedExposure> groups = new EnumMap<>(FaultGroup.class);
        damage.forEach((group, at) -> {
            Arrays.setAll(sum, k -> sum[k] + at[k]);
            groups.put(group, exposure(at));
        });
        return new Damage(exposure(sum), groups);
    }

    private static LaggedExposure exposure(double[] expected) {
        List<Double> boxed = new ArrayList<>();
        Arrays.stream(expected).forEach(boxed::add);
        return new LaggedExposure(KNOTS, boxed);
    }
}
