package weatherlap.reports.compare;

import java.util.ArrayList;
import java.util.List;
import weatherlap.reports.page.Block;
import weatherlap.reports.page.RunBlocks;
import weatherlap.reports.page.Section;
import weatherlap.reports.page.Trace;

/** How the numbers were worked out, where they come from, and what they are not. */
final class MethodSection {
    private MethodSection() {}

    static Section of(CompareReport report) {
        List<Trace> traces = new Traces(
                        report.simulator(),
                        ReportPictures.middleByPrice(report.comparison().results())
                                .house(),
                        report.sources())
                .all();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraphs(List.of(report.scope())));
        blocks.add(new Block.Paragraphs(MethodText.METHOD));
        blocks.add(new Block.Heading("trace", "Where the numbers come from"));
        blocks.add(new Block.Sources(traces));
        blocks.add(new Block.Kept(Block.Heading.of("Words"), Block.Table.of(Glossary.table())));
        blocks.add(Block.Heading.of("Cautions"));
        blocks.add(new Block.Points(MethodText.CAUTIONS));
        blocks.addAll(RunBlocks.doubtful(report.warnings()));
        return new Section("method", "How it was worked out", "Method", Section.Sheet.PLAIN, blocks);
    }
}
