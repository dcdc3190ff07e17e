package weatherlap.analysis.unmeasured;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import weatherlap.analysis.plan.Wherever;
import weatherlap.datasets.shortform.HouseDefaults;
import weatherlap.datasets.shortform.HouseDefaults.End;
import weatherlap.datasets.shortform.ShortPortfolio;
import weatherlap.datasets.shortform.ShortPortfolio.Taken;
import weatherlap.sim.house.House;
import weatherlap.sim.run.Simulator;

/**
 * The swing of every default of a short table, on some houses of it.
 *
 * @param swings largest first, those of the same swing in the order in which they were taken
 * @param houses that they were measured on
 */
public record SwingStudy(List<DefaultSwing> swings, int houses) {
    /** Houses that are swept, evenly spread over the table; a house takes some milliseconds for each end of each default. */
    public static final int MOST_HOUSES = 8;

    public SwingStudy {
        swings = List.copyOf(swings);
    }

    /** @param simulator of the run, so that every end is seen on the same random numbers */
    public static SwingStudy of(ShortPortfolio all, Simulator simulator) {
        ShortPortfolio some = all.some(MOST_HOUSES);
        HouseDefaults usual = HouseDefaults.bundled();
        List<House> houses = some.houses(usual);
        double[] taken =
                houses.stream().mapToDouble(house -> savedUsd(house, simulator)).toArray();
        List<DefaultSwing> swings = some.taken(usual).stream()
                .map(one -> {
                    double[] least = at(End.LEAST, one, usual, some, houses, taken, simulator);
                    double[] most = at(End.MOST, one, usual, some, houses, taken, simulator);
                    return new DefaultSwing(one, mean(least), mean(taken), mean(most), changing(least, taken, most));
                })
                .sorted(Comparator.comparingDouble(DefaultSwing::usd).reversed())
                .toList();
        return new SwingStudy(swings, houses.size());
    }

    /** What is saved at each house with one default at an end; a house that is the same there is not simulated anew. */
    private static double[] at(
            End end,
            Taken one,
            HouseDefaults usual,
            ShortPortfolio some,
            List<House> houses,
            double[] taken,
            Simulator simulator) {
        List<House> moved = some.houses(usual.with(one.column(), end));
        return IntStream.range(0, taken.length)
                .mapToDouble(h -> moved.get(h).equals(houses.get(h)) ? taken[h] : savedUsd(moved.get(h), simulator))
                .toArray();
    }

    /** What the first method saves against the second at a house, mean over the draws, USD. */
    private static double savedUsd(House house, Simulator simulator) {
        Wherever plans = Wherever.of(simulator.simulateForPlans(house));
        return plans.second().horizonCostUsd() - plans.first().horizonCostUsd();
    }

    private static int changing(double[] least, double[] taken, double[] most) {
        return (int) IntStream.range(0, taken.length)
                .filter(h ->
                        Math.signum(least[h]) != Math.signum(taken[h]) || Math.signum(most[h]) != Math.signum(taken[h]))
                .count();
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElse(0);
    }
}
