package weatherlap.analysis.rule;

import java.util.OptionalDouble;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.tables.ResultTable;

/** {@code rule.csv}: one row a candidate for the default. */
public final class RuleTable {
    public static final Layout<RuleScore> LAYOUT = Layout.<RuleScore>of(
                    "rule.csv", "Rule", "One way to choose the method.")
            .text("rule", "rule", "always_ and a method, such as always_insert; rule; best_choice", RuleScore::name)
            .optionalText("questions", "questions", "what is asked of a house, in words", RuleScore::questions)
            .number(
                    "expected_horizon_cost_usd",
                    "expected cost over the years",
                    "USD",
                    2,
                    "mean over the houses",
                    RuleScore::expectedHorizonCostUsd)
            .number(
                    "regret_usd",
                    "above the best pick",
                    "USD",
                    2,
                    "cost above the best choice for each house, mean",
                    RuleScore::regretUsd)
            .optionalNumber(
                    "held_out_regret_usd",
                    "above the best pick, unseen houses",
                    "USD",
                    2,
                    "the same on houses that the rule was not made from",
                    score -> OptionalDouble.of(score.heldOutRegretUsd()))
            .number(
                    "share_full_flange",
                    "share of the first, earlier name",
                    "fraction",
                    3,
                    "the same as share_first, by its earlier name",
                    RuleScore::shareFirst)
            .number(
                    "share_first",
                    "share of the first",
                    "fraction",
                    3,
                    "houses for which it chooses the first of the two methods",
                    RuleScore::shareFirst)
            .optionalNumber(
                    "stays_best_probability",
                    "stays best",
                    "fraction",
                    3,
                    "share of runs in which it is the cheapest of the rules",
                    score -> OptionalDouble.of(score.staysBestProbability()))
            .build();

    private RuleTable() {}

    public static ResultTable of(RuleStudy study) {
        return ResultTable.of(LAYOUT, study.scores());
    }
}
