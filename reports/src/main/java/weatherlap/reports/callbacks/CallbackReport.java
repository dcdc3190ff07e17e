package weatherlap.reports.callbacks;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import weatherlap.analysis.callbacks.CallbackFit;
import weatherlap.analysis.callbacks.SeenExpected;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.TableWriter;
import weatherlap.reports.page.Block;
import weatherlap.reports.page.Figure;
import weatherlap.reports.page.PageFiles;
import weatherlap.reports.page.PlainTable;
import weatherlap.reports.page.ReportPage;
import weatherlap.reports.page.RunBlocks;
import weatherlap.reports.page.Section;

/**
 * Everything that {@code callbacks} writes, but for {@code run.json} and the assumptions.
 *
 * @param name of the folder of the jobs
 * @param climate name of the weather
 * @param assumed which tables are not as bundled, in words
 * @param warnings doubtful but usable input
 * @param run what is needed to repeat the run: name and value, to show
 */
public record CallbackReport(
        String name, CallbackFit fit, String climate, String assumed, List<String> warnings, Map<String, String> run) {
    /** Writes the table, the page, the sheet and the pictures. */
    public void write(OutputFolder folder) throws IOException {
        TableWriter.CSV.write(folder, List.of(ResultTable.of(SeenExpected.TABLE, fit.seen())));
        folder.write(PageFiles.of("callbacks", page()));
    }

    /** The result in a few lines. */
    public List<String> lines() {
        CallbackText text = new CallbackText(fit);
        List<String> lines = new ArrayList<>(text.sentences());
        lines.add("");
        lines.addAll(PlainTable.lines(text.levels()));
        lines.add("");
        lines.addAll(PlainTable.lines(text.groupLevels()));
        return lines;
    }

    private ReportPage page() {
        CallbackText text = new CallbackText(fit);
        List<Block> evidence = new ArrayList<>();
        new CallbackPictures(fit)
                .all()
                .forEach(picture ->
                        evidence.add(new Block.Picture(Figure.of(picture, "seen-expected.csv and the service calls"))));
        evidence.add(Block.Table.of(text.seen()));
        return new ReportPage(
                "Leak level from the calls of " + name,
                text.scope() + " Weather of " + climate + "; " + assumed + ".",
                "",
                List.of(
                        Section.answer(List.of(
                                new Block.Paragraphs(text.found()),
                                Block.Table.of(text.levels()),
                                Block.Table.of(text.groupLevels()))),
                        new Section("evidence", "The evidence", "Evidence", Section.Sheet.PLAIN, evidence),
                        new Section("method", "How it was worked out", "Method", Section.Sheet.PLAIN, method(text))));
    }

    private List<Block> method(CallbackText text) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraphs(text.method()));
        blocks.addAll(RunBlocks.doubtful(warnings));
        blocks.add(RunBlocks.repeat(run));
        return blocks;
    }
}
