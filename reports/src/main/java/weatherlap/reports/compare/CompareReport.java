package weatherlap.reports.compare;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weatherlap.analysis.callbacks.FittedFaultTables;
import weatherlap.analysis.choice.Decision;
import weatherlap.analysis.prices.PriceList;
import weatherlap.analysis.rule.RuleTable;
import weatherlap.analysis.season.SeasonStudy;
import weatherlap.analysis.season.SeasonTable;
import weatherlap.analysis.tables.Answer;
import weatherlap.analysis.tables.Comparison;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.analysis.tables.TableCells;
import weatherlap.analysis.unmeasured.SwingStudy;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.datasets.shop.Terms;
import weatherlap.reports.format.SourceNames;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.TableWriter;
import weatherlap.reports.output.TwoThreads;
import weatherlap.reports.owner.OwnerFigures;
import weatherlap.reports.owner.OwnerWords;
import weatherlap.reports.page.PlainTable;
import weatherlap.reports.page.WeatherWords;
import weatherlap.reports.whatif.FrontSheets;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.many.Ahead;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.price.JobParts;
import weatherlap.sim.rain.RainClimate;
import weatherlap.sim.run.Simulator;

/**
 * What {@code compare} writes about one portfolio as a whole: all but {@code run.json}, the assumptions and the {@link ResultFiles}.
 *
 * @param name of the portfolio, shown in titles
 * @param comparison of both methods
 * @param jobs of the houses shown, by the {@link FrontSheets#alternatives} to the run
 * @param simulator that made the results
 * @param climate the weather
 * @param terms by which the shop rounds its price list
 * @param assumed which tables of assumptions are not as bundled, in words
 * @param sources what the tables that were read are called
 * @param warnings doubtful but usable input
 * @param run what is needed to repeat the run: name and value, to show
 * @param unmeasured what was taken as usual, of houses that a short table gave
 * @param found on the comparison: sought while what needs none of it is made
 */
public record CompareReport(
        String name,
        Comparison comparison,
        List<Map<Method, JobParts>> jobs,
        Simulator simulator,
        Assumptions assumptions,
        RainClimate climate,
        Terms terms,
        String assumed,
        SourceNames sources,
        List<String> warnings,
        Map<String, String> run,
        Optional<SwingStudy> unmeasured,
        Ahead<Findings> found) {

    /**
     * Writes the tables, {@code summary.json} and the workbook on one thread, and meanwhile the appendix, which takes longest, on this and
     * another; the two printed pages and the page on screen on whichever comes free.
     */
    public void write(OutputFolder folder) throws IOException {
        try (TwoThreads threads = new TwoThreads()) {
            threads.give(() -> writeTables(folder));
            ReportPages pages = new ReportPages(this);
            threads.give(() -> folder.write("appendix.pdf", pages.appendix()));
            threads.give(() -> pages.writeUpFront(folder));
            threads.await();
        }
    }

    private void writeTables(OutputFolder folder) throws IOException {
        ResultTable segments = comparison.segments().table();
        ResultTable prices = PriceList.table(comparison.shown(), terms::rounded);
        ResultTable rule = RuleTable.of(decision().study());
        Optional<SeasonStudy> season = found.get().season();
        ResultTable seasons = season.map(SeasonTable::of).orElseGet(() -> SeasonTable.of(List.of()));
        TableWriter.CSV.write(folder, List.of(rule, seasons, prices));
        folder.write("summary.json", SummaryJson.of(figures(), segments, season));
        List<TableCells> sheets = new ArrayList<>(List.of(rule, segments, seasons, prices));
        sheets.addAll(ResultFiles.rows(comparison.shown()));
        TableWriter.workbook(
                        FrontSheets.of(
                                title(), inShort(), figures(), ownRecords(), comparison, jobs, assumptions, terms),
                        workbookLines())
                .write(folder, sheets);
    }

    /** The result in a few lines. */
    public List<String> lines() {
        Answer answer = comparison.answer();
        List<String> lines = new ArrayList<>();
        lines.add(new OwnerWords(figures()).inALine());
        lines.addAll(PlainTable.lines(AnswerText.keyFigures(answer, years())));
        return lines;
    }

    /** The default rule and the choice for each house shown. */
    Decision decision() {
        return found.get().decision();
    }

    OwnerFigures figures() {
        return found.get().figures();
    }

    /** Of the shop, on which the level of the leaks rests, in words; empty: on judgement. */
    Optional<String> ownRecords() {
        return FittedFaultTables.records(assumptions);
    }

    /** The horizon. */
    int years() {
        return assumptions.scenario().whole(Scalar.HORIZON_YEARS);
    }

    String title() {
        Contrast contrast = comparison.answer().contrast();
        return InWords.capital(contrast.first().label()) + " or "
                + contrast.second().label() + ": " + name;
    }

    /** What was compared, and what it rests on. */
    String scope() {
        Answer answer = comparison.answer();
        return Numbers.count(answer.houses(), "house", "houses") + ", "
                + Numbers.count(answer.openings(), "opening", "openings") + "; weather of " + climate.name() + "; "
                + assumed
                + "; "
                + Numbers.count(comparison.draws(), "run", "runs") + " of the numbers. " + WeatherWords.report(climate)
                + (comparison.isSample() ? " " + sample() : "");
    }

    /** What was compared, for those who read one page. */
    String inShort() {
        return Numbers.count(comparison.answer().houses(), "house", "houses") + " with "
                + Numbers.count(comparison.answer().openings(), "window", "windows") + ". "
                + (climate.anyBearing()
                        ? "The weather is not yours: that of " + climate.name() + " stands in."
                        : "Weather: " + climate.name() + ".");
    }

    private String sample() {
        return "The rule, the pictures of single houses, the list of houses and the workbook rest on "
                + Numbers.count(comparison.shown().size(), "house", "houses")
                + " spread evenly over the portfolio; all sums and the CSV tables hold every house.";
    }

    private List<String> workbookLines() {
        OwnerWords words = new OwnerWords(figures());
        List<String> lines = new ArrayList<>(List.of(title(), scope(), words.inALine()));
        words.questions(ownRecords()).forEach(question -> lines.add(question.asks() + " " + question.answer()));
        lines.add(
                "Numbers keep all their digits and are shown rounded. Ranges: one run in ten lies below the 10% point, nine in ten"
                        + " below the 90% point.");
        return lines;
    }
}
