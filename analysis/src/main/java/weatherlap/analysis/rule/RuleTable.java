package weatherlap.analysis.rule;

import java.util.OptionalDouble;
import weatherlap.analysis.columns.Schemas;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.analysis.tables.TableBuilder;

/** {@code rule.csv}. */
public final class RuleTable {
    private RuleTable() {}

    public static ResultTable of(RuleStudy study) {
        TableBuilder table = new TableBuilder(Schemas.RULE);
        for (RuleScore score : study.scores()) {
            table.row(
                    score.name(),
                    score.questions(),
                    score.expectedHorizonCostUsd(),
                    score.regretUsd(),
                    OptionalDouble.of(score.heldOutRegretUsd()),
                    score.shareFullFlange(),
                    OptionalDouble.of(score.staysBestProbability()));
        }
        return table.build();
    }
}
