package weatherlap.analysis.drivers;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import weatherlap.sim.Check;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Method;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.House;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.HouseResult;
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
        implements Differences.Model {
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
    public Differences at(Assumptions known) {
        Simulator simulator = simulator(known);
        double[] cost = new double[houses.size()];
        double[] risk = new double[houses.size()];
        for (int h = 0; h < cost.length; h++) {
            HouseResult result = simulator.simulate(houses.get(h));
            cost[h] = Arrays.stream(result.horizonDifferenceUsd()).average().orElseThrow();
            risk[h] = result.method(Method.FULL_FLANGE).leakProbability()
                    - result.method(Method.INSERT).leakProbability();
        }
        return new Differences(cost, risk);
    }

    /** Cost difference by draw, mean over the houses, USD. */
    public double[] differenceUsd(Assumptions assumptions) {
        Simulator simulator = simulator(assumptions);
        double[][] byHouse = houses.parallelStream()
                .map(house -> simulator.simulate(house).horizonDifferenceUsd())
                .toArray(double[][]::new);
        double[] mean = new double[draws];
        for (double[] house : byHouse) {
            for (int d = 0; d < draws; d++) {
                mean[d] += house[d] / byHouse.length;
            }
        }
        return mean;
    }

    private Simulator simulator(Assumptions assumptions) {
        return new Simulator(assumptions, climate.apply(assumptions.scenario()), Sampling.STRATIFIED, draws, seed);
    }
}
