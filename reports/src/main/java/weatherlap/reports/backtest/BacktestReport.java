package weatherlap.reports.backtest;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import weatherlap.analysis.backtest.BacktestResult;
import weatherlap.analysis.backtest.BacktestTables;
import weatherlap.analysis.backtest.CalibrationCurve;
import weatherlap.analysis.backtest.JobAmount;
import weatherlap.analysis.backtest.Score;
import weatherlap.charts.study.CalibrationCurves;
import weatherlap.reports.format.Json;
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
 * Everything that {@code backtest} writes, but for {@code run.json}.
 *
 * @param name of the job records, shown in titles
 * @param assumed climate, and which tables are not as bundled, in words
 * @param warnings doubtful but usable input
 * @param run what is needed to repeat the run: name and value, to show
 */
public record BacktestReport(
        String name, String assumed, BacktestResult result, List<String> warnings, Map<String, String> run) {
    private static final MathContext DIGITS = new MathContext(6);

    /** Writes the tables, the summary, the page, the sheet and the picture. */
    public void write(OutputFolder folder) throws IOException {
        TableWriter.CSV.write(folder, BacktestTables.of(result));
        folder.write("summary.json", Json.of(summary()));
        folder.write(PageFiles.of("backtest", page()));
    }

    /** The result in a few lines. */
    public List<String> lines() {
        BacktestText text = new BacktestText(result);
        List<String> lines = new ArrayList<>(text.sentences());
        lines.add("");
        lines.addAll(PlainTable.lines(text.scores()));
        return lines;
    }

    private Map<String, Object> summary() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("jobs", result.jobs());
        json.put("parts", result.parts());
        json.put("jobs_at_measured_houses", result.measured());
        Map<String, Object> amounts = new LinkedHashMap<>();
        for (JobAmount amount : result.amounts()) {
            Map<String, Object> seers = new LinkedHashMap<>();
            result.scores().stream()
                    .filter(score -> score.amount() == amount)
                    .forEach(score -> seers.put(score.seer().word(), score(score)));
            amounts.put(amount.word(), seers);
        }
        json.put("amounts", amounts);
        return json;
    }

    private static Map<String, Object> score(Score score) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("unit", score.amount().unit());
        json.put("jobs", score.jobs());
        json.put("came", number(score.came()));
        json.put("foreseen", number(score.foresaw()));
        json.put("score", number(score.score()));
        json.put("gain_over_average", number(score.gain()));
        json.put("gain_error", number(score.gainError()));
        json.put("against_average", score.verdict().name().toLowerCase(Locale.ROOT));
        json.put("within_50", number(score.within50()));
        json.put("within_80", number(score.within80()));
        json.put("within_90", number(score.within90()));
        json.put("width_90", number(score.width()));
        return json;
    }

    private static BigDecimal number(double value) {
        return new BigDecimal(value).round(DIGITS);
    }

    private ReportPage page() {
        BacktestText text = new BacktestText(result);
        List<Section> sections = new ArrayList<>();
        sections.add(Section.answer(List.of(new Block.Paragraphs(text.sentences()), Block.Table.of(text.totals()))));
        sections.add(
                Section.plain("scores", "Against a plain average", "Scores", List.of(Block.Table.of(text.scores()))));
        sections.add(Section.plain(
                "bands",
                "Did the bands keep their word?",
                "Bands",
                List.of(
                        new Block.Picture(Figure.of(curves(), "backtest-curves.csv")),
                        Block.Table.of(text.coverage()))));
        sections.add(Section.plain(
                "kinds",
                "Bias by kind of job",
                "Kinds",
                result.amounts().stream()
                        .map(amount -> (Block) Block.Table.of(text.segments(amount)))
                        .toList()));
        sections.add(Section.plain("method", "How it was worked out", "Method", method()));
        return new ReportPage("Predicted and happened: " + name, text.scope() + " " + assumed, "", sections);
    }

    private CalibrationCurves curves() {
        return new CalibrationCurves(
                new BacktestText(result).scope(),
                result.amounts().stream()
                        .map(amount -> new CalibrationCurves.Panel(
                                amount.word(),
                                result.curves().stream()
                                        .filter(curve -> curve.amount() == amount)
                                        .map(BacktestReport::line)
                                        .toList()))
                        .toList());
    }

    private static CalibrationCurves.Line line(CalibrationCurve curve) {
        return new CalibrationCurves.Line(curve.seer().label(), curve.seen());
    }

    private List<Block> method() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraphs(BacktestText.METHOD));
        blocks.addAll(RunBlocks.doubtful(warnings));
        blocks.add(RunBlocks.repeat(run));
        return blocks;
    }
}
