package weatherlap.reports.scenarios;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import weatherlap.analysis.scenarios.ScenarioTables;
import weatherlap.analysis.scenarios.SideBySide;
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
import weatherlap.reports.page.TableView;

/**
 * What {@code compare --scenario} writes, but for {@code run.json} and the assumptions.
 *
 * @param name of the portfolio
 * @param scope what was simulated, in a line
 * @param run what is needed to repeat the run: name and value, to show
 */
record ScenarioReport(String name, String scope, SideBySide sets, Map<String, Object> run) {
    void write(OutputFolder folder) throws IOException {
        List<ResultTable> tables = ScenarioTables.of(sets);
        TableWriter.CSV.write(folder, tables);
        TableWriter.workbook(Stream.concat(Stream.of("Sets of assumptions for " + name, scope), lines().stream())
                        .toList())
                .write(folder, tables);
        folder.write(PageFiles.of("scenarios", page()));
    }

    /** The result in a few lines. */
    List<String> lines() {
        return PlainTable.lines(new SideBySideText(sets).headlines());
    }

    private ReportPage page() {
        SideBySideText text = new SideBySideText(sets);
        return new ReportPage(
                "Sets of assumptions side by side, for " + name,
                scope + ".",
                "",
                List.of(
                        Section.answer(List.of(
                                new Block.Headline(text.sentences().get(0)),
                                new Block.Points(text.sentences()
                                        .subList(1, text.sentences().size())),
                                new Block.Picture(Figure.of(text.slopes(scope), "scenario-methods.csv")),
                                Block.Table.of(text.headlines()))),
                        new Section("plans", "Houses whose plan changes", "Plans", Section.Sheet.PLAIN, changed(text)),
                        new Section(
                                "rules",
                                "The rule of one set, used in another",
                                "Rules",
                                Section.Sheet.PLAIN,
                                List.of(new Block.Points(text.rules()), Block.Table.of(text.regrets()))),
                        new Section(
                                "run",
                                "To repeat this run",
                                "Run",
                                Section.Sheet.PLAIN,
                                List.of(RunBlocks.depends(run)))));
    }

    /** By kind of house, then house by house where there are any. */
    private List<Block> changed(SideBySideText text) {
        Block kinds = new Block.Picture(Figure.of(text.changedKinds(scope), "flips-by-kind.csv"));
        TableView flips = text.flips();
        return flips.rows().isEmpty() ? List.of(kinds) : List.of(kinds, Block.Table.of(flips));
    }
}
