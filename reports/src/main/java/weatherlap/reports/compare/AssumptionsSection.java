package weatherlap.reports.compare;

import java.util.ArrayList;
import java.util.List;
import weatherlap.reports.page.Block;
import weatherlap.reports.page.RunBlocks;
import weatherlap.reports.page.Section;

/** Every row that the results rest on, and what is needed to repeat the run. */
final class AssumptionsSection {
    private AssumptionsSection() {}

    static Section of(CompareReport report) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraphs(List.of(
                "Every row behind the results, as used, and what it rests on. Where that is a judgment, memory or made up, it says"
                        + " so.")));
        new AssumptionViews(report.assumptions(), report.sources())
                .all()
                .forEach(table -> blocks.add(new Block.Table(table, "long", "")));
        blocks.add(RunBlocks.repeat(report.run()));
        return new Section("assumptions", "Assumptions", "Assumptions", Section.Sheet.WIDE, blocks);
    }
}
