package weatherlap.analysis.drivers;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.StatUtils;
import weatherlap.analysis.plan.Plan;
import weatherlap.analysis.plan.Wherever;
import weatherlap.sim.Check;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.HouseMeans;
import weatherlap.sim.run.Simulator;

/**
 * A portfolio that is simulated anew whenever the assumptions change. Seed and draws stay, so that two runs differ by the assumptions
 * alone.
 *
 * @param houses to simulate
 * @param climate for a scenario; should give the same climate back as long as what rain depends on does not change
 * @param draws a house
 */
public record SimulatedPortfolio(List<House> houses, Function<Scenario, RainClimate> climate, int draws, long seed)
        implements Houses {
    public SimulatedPortfolio {
        houses = List.copyOf(houses);
        Check.within("houses", houses.size(), 1, Integer.MAX_VALUE);
        Check.within("draws", draws, 1, 1_000_000);
    }

    /** At most so many houses, at even steps through the list. */
    public static List<House> sample(List<House> houses, int most) {
        int count = Math.min(most, houses.size());
        return IntStream.range(0, count)
                .mapToObj(i -> houses.get((int) ((long) i * houses.size() / count)))
                .toList();
    }

    @Override
    public int count() {
        return houses.size();
    }

    @Override
    public OneHouse house(int position, Assumptions base) {
        HouseMeans means = new HouseMeans(houses.get(position), base, sampling(base.scenario()), draws, seed);
        return known -> {
            Map<Method, HouseMeans.Mean> found = means.at(known, climate.apply(known.scenario()));
            HouseMeans.Mean first = found.get(means.contrast().first());
            HouseMeans.Mean second = found.get(means.contrast().second());
            return new Difference(
                    first.horizonCostUsd() - second.horizonCostUsd(),
                    first.leakProbability() - second.leakProbability());
        };
    }

    /**
     * Horizon costs of plans that can be built, each method wherever no limit closes it; means over the houses.
     *
     * @param firstUsd mean over the draws, USD
     * @param secondUsd likewise
     * @param differenceUsd first less second by draw, USD, moved so that its mean is that of the two, which have less sampling
     *     error
     */
    @SuppressWarnings("ArrayRecordComponent") // draws
    public record Costs(double firstUsd, double secondUsd, double[] differenceUsd) {}

    /** What the houses cost under assumptions, ranges and all: the headline of a comparison. */
    public Costs costs(Assumptions assumptions) {
        Simulator simulator = simulator(assumptions);
        List<Wherever> results = houses.parallelStream()
                .map(house -> Wherever.of(simulator.simulateForPlans(house)))
                .toList();
        double[] difference = new double[draws];
        for (Wherever house : results) {
            double[] own = house.horizonDifferenceUsd();
            for (int d = 0; d < draws; d++) {
                difference[d] += own[d] / results.size();
            }
        }
        double first = mean(results, Wherever::first);
        double second = mean(results, Wherever::second);
        double off = first - second - StatUtils.mean(difference);
        return new Costs(
                first, second, Arrays.stream(difference).map(usd -> usd + off).toArray());
    }

    private static double mean(List<Wherever> results, Function<Wherever, Plan> side) {
        return results.stream()
                .mapToDouble(house -> side.apply(house).horizonCostUsd())
                .average()
                .orElseThrow();
    }

    private Simulator simulator(Assumptions assumptions) {
        Scenario scenario = assumptions.scenario();
        return new Simulator(assumptions, climate.apply(scenario), sampling(scenario), draws, seed);
    }

    private static Sampling sampling(Scenario scenario) {
        return scenario.choice(Choice.SAMPLING, Sampling.class);
    }
}
