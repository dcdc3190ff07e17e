package weatherlap.reports.compare;

import weatherlap.analysis.rule.RuleScore;
import weatherlap.analysis.rule.RuleStudy;
import weatherlap.reports.page.ReportWords;
import weatherlap.reports.page.TableView;
import weatherlap.sim.method.Contrast;

/** The default rule beside what else a shop might do. */
final class RuleViews {
    private RuleViews() {}

    /** Cost and regret of each way to choose, means of a house. */
    static TableView regrets(Contrast contrast, RuleStudy study) {
        String first = contrast.first().many();
        TableView.Builder table = TableView.of(
                        "What a way to choose costs the average family over the years; how much more that is than the best pick house by"
                                + " house; and the same on houses the rule was not made from")
                .texts("way to choose")
                .numbers(
                        "cost",
                        "more than the best",
                        "on unseen houses",
                        first + " at",
                        "not the best at",
                        "cheapest in runs");
        for (RuleScore score : study.scores()) {
            table.row(
                    score.name().replace('_', ' '),
                    ReportWords.usd(score.expectedHorizonCostUsd()),
                    ReportWords.usd(score.regretUsd()),
                    ReportWords.usd(score.heldOutRegretUsd()),
                    ReportWords.percent(score.shareFirst(), 0),
                    ReportWords.percent(score.shareNotBest(), 0),
                    ReportWords.percent(score.staysBestProbability(), 0));
        }
        return table.build();
    }
}
