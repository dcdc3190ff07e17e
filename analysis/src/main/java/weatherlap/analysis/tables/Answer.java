package weatherlap.analysis.tables;

import java.util.EnumMap;
import java.util.Map;
import weatherlap.sim.assumptions.Method;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.MethodResult;
import weatherlap.sim.run.Results;
import weatherlap.sim.run.Summary;

/**
 * Which method costs less over a whole portfolio, by how much, and how sure that is.
 *
 * <p>One draw is the same world for every house, so the difference of the portfolio in a draw is the sum over its houses.
 *
 * @param cheaper the method with the lower mean horizon cost over the portfolio
 * @param savedPerHouseUsd what it saves against the other, over the draws, USD a house; negative where it costs more
 * @param probability share of the draws in which it costs less
 * @param departures houses for which the other method has the lower expected horizon cost
 * @param savedByDepartingUsd what taking the other method for those houses saves, expected, USD over the portfolio
 * @param methods means per house
 */
public record Answer(
        Method cheaper,
        Summary savedPerHouseUsd,
        double probability,
        int departures,
        double savedByDepartingUsd,
        int houses,
        int openings,
        Map<Method, PerHouse> methods) {
    public Answer {
        methods = Map.copyOf(methods);
    }

    /**
     * Means over the houses of a portfolio, each wholly done by one method.
     *
     * @param anyLeak chance of leak damage at any opening of a house, mean over the houses, 0 to 1
     */
    public record PerHouse(
            double priceUsd,
            double costUsd,
            double labourHours,
            double crewDays,
            double glassLostFraction,
            double anyLeak,
            double expectedDamageUsd,
            double horizonCostUsd,
            double grossProfitPerCrewDayUsd) {}

    /**
     * Sums a portfolio up.
     *
     * @throws IllegalArgumentException for a portfolio without houses
     */
    public static Answer of(Results results) {
        int houses = results.houses().size();
        if (houses == 0) {
            throw new IllegalArgumentException("The portfolio must hold a house.");
        }
        Map<Method, PerHouse> methods = new EnumMap<>(Method.class);
        for (Method method : Method.values()) {
            methods.put(method, perHouse(results, method));
        }
        Method cheaper = methods.get(Method.FULL_FLANGE).horizonCostUsd()
                        < methods.get(Method.INSERT).horizonCostUsd()
                ? Method.FULL_FLANGE
                : Method.INSERT;
        double[] saved = savedPerHouse(results, cheaper);
        int better = 0;
        for (double draw : saved) {
            better += draw > 0 ? 1 : 0;
        }
        double departing = 0;
        int departures = 0;
        for (HouseResult house : results.houses()) {
            if (house.preferred() != cheaper) {
                departures++;
                departing += house.method(cheaper).horizonCostUsd().mean()
                        - house.method(cheaper.other()).horizonCostUsd().mean();
            }
        }
        double mean = methods.get(cheaper.other()).horizonCostUsd()
                - methods.get(cheaper).horizonCostUsd();
        return new Answer(
                cheaper,
                Summary.of(mean, saved),
                (double) better / saved.length,
                departures,
                departing,
                houses,
                results.houses().stream()
                        .mapToInt(h -> h.house().openingCount())
                        .sum(),
                methods);
    }

    public PerHouse of(Method method) {
        return methods.get(method);
    }

    private static double[] savedPerHouse(Results results, Method cheaper) {
        double sign = cheaper == Method.FULL_FLANGE ? -1 : 1;
        double[] saved = new double[results.draws()];
        for (HouseResult house : results.houses()) {
            for (int d = 0; d < saved.length; d++) {
                saved[d] += sign
                        * house.horizonDifferenceUsd()[d]
                        / results.houses().size();
            }
        }
        return saved;
    }

    private static PerHouse perHouse(Results results, Method method) {
        double glass = 0;
        double glassToday = 0;
        double[] sums = new double[8];
        for (HouseResult house : results.houses()) {
            MethodResult result = house.method(method);
            glass += result.glassFt2();
            glassToday += result.glassExistingFt2();
            double[] values = {
                result.priceUsd(),
                result.costUsd().mean(),
                result.labourHours().mean(),
                result.crewDays(),
                result.leakProbability(),
                result.expectedDamageUsd(),
                result.horizonCostUsd().mean(),
                result.grossProfitUsd()
            };
            for (int i = 0; i < values.length; i++) {
                sums[i] += values[i];
            }
        }
        int n = results.houses().size();
        return new PerHouse(
                sums[0] / n,
                sums[1] / n,
                sums[2] / n,
                sums[3] / n,
                glassToday == 0 ? 0 : (glassToday - glass) / glassToday,
                sums[4] / n,
                sums[5] / n,
                sums[6] / n,
                sums[3] == 0 ? 0 : sums[7] / sums[3]);
    }
}
