package weatherlap.reports.compare;

import weatherlap.analysis.rule.RuleScore;
import weatherlap.analysis.rule.RuleStudy;
import weatherlap.reports.page.ReportWords;
import weatherlap.reports.page.TableView;

/** The default rule beside what else a shop might do. */
final class RuleViews {
    private RuleViews() {}

    /** Cost and regret of each way to choose, means of a house. */
    static TableView regrets(RuleStudy study) {
        TableView.Builder table = TableView.of(
                        "What a way to choose costs a family over the horizon, means of a house. Regret: above the best choice for each"
                                + " house; held out: on houses the rule was not made from")
                .texts("way to choose")
                .numbers("cost", "regret", "held out", "full-flange", "not the best", "cheapest in");
        for (RuleScore score : study.scores()) {
            table.row(
                    score.name().replace('_', ' '),
                    ReportWords.usd(score.expectedHorizonCostUsd()),
                    ReportWords.usd(score.regretUsd()),
                    ReportWords.usd(score.heldOutRegretUsd()),
                    ReportWords.percent(score.shareFullFlange(), 0),
                    ReportWords.percent(score.shareNotBest(), 0),
                    ReportWords.percent(score.staysBestProbability(), 0));
        }
        return table.build();
    }
}
