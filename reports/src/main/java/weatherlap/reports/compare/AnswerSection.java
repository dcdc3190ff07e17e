package weatherlap.reports.compare;

import java.util.ArrayList;
import java.util.List;
import weatherlap.analysis.choice.DecisionWords;
import weatherlap.reports.page.Block;
import weatherlap.reports.page.Section;

/** Behind the two pages: both methods side by side, how good the rule is, and what would change the answer. */
final class AnswerSection {
    private AnswerSection() {}

    static Section of(CompareReport report) {
        ChangeText changes = new ChangeText(report.comparison().results(), report.simulator());
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Points(AnswerText.sentences(report.comparison().answer(), report.ownRecords())));
        blocks.add(Block.Table.of(AnswerText.keyFigures(report.comparison().answer(), report.years())));
        blocks.add(Block.Heading.of("How good the rule is"));
        blocks.add(new Block.Paragraphs(DecisionWords.of(report.decision())));
        blocks.add(Block.Table.of(RuleViews.regrets(
                report.decision().cases().contrast(), report.decision().study())));
        blocks.add(Block.Heading.of("What would change the answer"));
        blocks.add(new Block.Points(changes.sentences()));
        blocks.add(Block.Table.of(changes.otherChoices()));
        return new Section("detail", "More on the answer", "More", Section.Sheet.PLAIN, blocks);
    }
}
