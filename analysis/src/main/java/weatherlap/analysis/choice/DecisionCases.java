package weatherlap.analysis.choice;

import java.util.Arrays;
import java.util.List;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.rule.Cases;

/** Choices as cases for the search of a rule. */
final class DecisionCases {
    private DecisionCases() {}

    /**
     * One case a house: the plan of the second method wherever a limit lets it against that of the first, draw by draw, moved to the
     * difference of their means, which has less sampling error. Where limits leave one plan the difference is 0 in every draw.
     *
     * @param bearings whether a rule may ask which way windows face
     */
    static Cases of(List<HouseChoice> choices, boolean bearings) {
        double[] secondUsd = choices.stream()
                .mapToDouble(
                        c -> c.wherever().get(c.result().contrast().second()).horizonCostUsd())
                .toArray();
        double[][] differences =
                choices.stream().map(DecisionCases::differenceUsd).toArray(double[][]::new);
        return Cases.apart(
                choices.get(0).result().named(),
                HouseFacts.of(choices.stream().map(c -> c.result().house()).toList(), bearings),
                secondUsd,
                differences);
    }

    private static double[] differenceUsd(HouseChoice choice) {
        double[] draws = choice.horizonDifferenceUsd();
        if (choice.onePlan()) {
            return new double[draws.length];
        }
        double mean = Arrays.stream(draws).average().orElseThrow();
        double plans = choice.differenceUsd();
        return Arrays.stream(draws).map(d -> d - mean + plans).toArray();
    }
}
