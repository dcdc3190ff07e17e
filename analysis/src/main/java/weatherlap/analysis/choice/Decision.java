package weatherlap.analysis.choice;

import java.util.List;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.rule.Cases;
import weatherlap.analysis.rule.RuleStudy;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.random.Streams;

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
     * @param choices of one house or more
     * @param scenario gives the seed of the folds
     * @param bearings whether a rule may ask which way windows face: not where rain is the same on every side
     */
    public static Decision of(List<HouseChoice> choices, Scenario scenario, boolean bearings) {
        Cases cases = DecisionCases.of(choices, bearings);
        long seed = (long) scenario.value(Scalar.SEED);
        return new Decision(choices, cases, RuleStudy.of(cases, FOLDS, new Streams(seed)));
    }
}
