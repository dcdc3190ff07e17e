package weatherlap.analysis.choice;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import weatherlap.analysis.rule.Cases;
import weatherlap.analysis.rule.RuleStudy;
import weatherlap.sim.assumptions.Method;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.House;
import weatherlap.sim.random.Streams;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.run.Results;

/**
 * The decision for a portfolio: a choice for every house, and a default rule.
 *
 * @param choices in the order of the portfolio
 * @param cases the same, as the rule was found on them
 */
public record Decision(List<HouseChoice> choices, Cases cases, RuleStudy study) {
    /** Parts of the portfolio that are held out in turn. */
    private static final int FOLDS = 10;

    public Decision {
        choices = List.copyOf(choices);
    }

    /**
     * Decides.
     *
     * @param results of one house or more
     * @param takeoff of a house, as the simulator gives it
     * @param scenario gives the risk limit and the seed of the folds
     */
    public static Decision of(Results results, Function<House, Map<Method, HouseTakeoff>> takeoff, Scenario scenario) {
        List<HouseChoice> choices = results.houses().parallelStream()
                .map(result -> HouseChoice.of(result, scenario.value(Scalar.RISK_LIMIT), setupUsd(result, takeoff)))
                .toList();
        Cases cases = DecisionCases.of(choices);
        long seed = (long) scenario.value(Scalar.SEED);
        return new Decision(choices, cases, RuleStudy.of(cases, FOLDS, new Streams(seed)));
    }

    private static Map<Method, Double> setupUsd(
            HouseResult result, Function<House, Map<Method, HouseTakeoff>> takeoff) {
        Map<Method, Double> setup = new EnumMap<>(Method.class);
        takeoff.apply(result.house()).forEach((method, one) -> setup.put(method, SecondMethod.setupUsd(one)));
        return setup;
    }
}
