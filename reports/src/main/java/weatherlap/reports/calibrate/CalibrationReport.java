package weatherlap.reports.calibrate;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import weatherlap.analysis.calibration.Calibration;
import weatherlap.analysis.calibration.CalibrationTables;
import weatherlap.analysis.money.MoneyFit;
import weatherlap.analysis.money.MoneyTables;
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
 * Everything that {@code calibrate} writes, but for {@code run.json} and the assumptions.
 *
 * @param name of the job records, shown in titles
 * @param money what material cost and prices left
 * @param warnings doubtful but usable input
 * @param run what is needed to repeat the run: name and value, to show
 */
public record CalibrationReport(
        String name, Calibration calibration, MoneyFit money, List<String> warnings, Map<String, String> run) {
    /** Writes the tables, the page, the sheet and the pictures. */
    public void write(OutputFolder folder) throws IOException {
        TableWriter.CSV.write(
                folder, List.of(CalibrationTables.steps(calibration), CalibrationTables.jobs(calibration)));
        if (money.isSeen()) {
            TableWriter.CSV.write(folder, MoneyTables.of(money));
        }
        folder.write(PageFiles.of("calibration", page()));
    }

    /** The result in a few lines. */
    public List<String> lines() {
        CalibrationText text = new CalibrationText(calibration);
        List<String> lines = new ArrayList<>();
        lines.add(text.sentences().get(0));
        lines.addAll(PlainTable.lines(text.keyFigures()));
        lines.add("");
        lines.addAll(PlainTable.lines(text.mostMoved()));
        lines.add("");
        lines.addAll(new BesideRatesText(calibration).crewSentences());
        lines.add(text.setAsideSentence());
        lines.addAll(text.typing());
        lines.addAll(new MoneyText(money).lines());
        return lines;
    }

    private ReportPage page() {
        CalibrationText text = new CalibrationText(calibration);
        BesideRatesText shop = new BesideRatesText(calibration);
        List<Section> sections = new ArrayList<>();
        sections.add(
                Section.answer(List.of(new Block.Paragraphs(text.sentences()), Block.Table.of(text.keyFigures()))));
        sections.add(Section.plain("evidence", "The evidence", "Evidence", pictures()));
        sections.add(Section.plain("crews", "Crews and years", "Crews", said(shop.crewSentences(), shop.crews())));
        sections.add(Section.plain("money", "Material and prices", "Material", materialAndPrices()));
        sections.add(Section.plain(
                "time-next",
                "What to time next",
                "Time next",
                said(List.of(shop.timeNextSentence()), shop.timeNext())));
        if (!calibration.changes().isEmpty()) {
            sections.add(Section.plain(
                    "since", "Since the last fit", "Changes", said(List.of(shop.changesSentence()), shop.changes())));
        }
        sections.add(Section.plain("rates", "The rates", "Rates", List.of(Block.Table.of(text.rates()))));
        sections.add(Section.plain(
                "left-out",
                "What records left out",
                "Left out",
                List.of(new Block.Paragraphs(List.of(shop.filledSentence())))));
        sections.add(Section.plain("aside", "Jobs set aside", "Jobs set aside", setAside(text)));
        sections.add(Section.plain("method", "How it was worked out", "Method", method()));
        return new ReportPage("Labor rates fitted to " + name, text.scope() + ".", "", sections);
    }

    private List<Block> pictures() {
        return new CalibrationPictures(calibration)
                .all().stream()
                        .map(picture -> (Block) new Block.Picture(Figure.of(picture, "job-fit.csv and labour-fit.csv")))
                        .toList();
    }

    private List<Block> materialAndPrices() {
        MoneyText text = new MoneyText(money);
        if (text.missing().isPresent()) {
            return List.of(new Block.Paragraphs(List.of(text.missing().get())));
        }
        List<Block> blocks = new ArrayList<>(said(text.sentences(), text.factors()));
        if (!money.items().isEmpty()) {
            blocks.add(Block.Table.of(text.items()));
        }
        return blocks;
    }

    private static List<Block> said(List<String> sentences, TableView table) {
        Block words = new Block.Paragraphs(sentences);
        return table.rows().isEmpty() ? List.of(words) : List.of(words, Block.Table.of(table));
    }

    private static List<Block> setAside(CalibrationText text) {
        TableView table = text.setAside();
        return List.of(
                table.rows().isEmpty()
                        ? new Block.Paragraphs(List.of(text.setAsideSentence()))
                        : Block.Table.of(table));
    }

    private List<Block> method() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraphs(CalibrationText.METHOD));
        if (money.isSeen()) {
            blocks.add(new Block.Paragraphs(List.of(MoneyText.METHOD)));
        }
        blocks.addAll(RunBlocks.doubtful(warnings));
        blocks.add(RunBlocks.repeat(run));
        return blocks;
    }
}
