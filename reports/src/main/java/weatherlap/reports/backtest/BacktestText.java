package weatherlap.reports.backtest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import weatherlap.analysis.backtest.BacktestResult;
import weatherlap.analysis.backtest.JobAmount;
import weatherlap.analysis.backtest.Score;
import weatherlap.analysis.backtest.Seer;
import weatherlap.analysis.backtest.SegmentBias;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.page.TableView;

/** A backtest in sentences and tables. */
final class BacktestText {
    static final List<String> METHOD = List.of(
            "The jobs are split into parts; jobs at one house are in one part. Each part is predicted three times: by the tables of the"
                    + " run; by the same tables with labor rates, crews, waste, prices, margin and leak level fitted to the other parts"
                    + " (calibrated); and by what a window took in the other parts, by that method, times the windows, as wide as those jobs"
                    + " were apart (average a window). No fit sees any outcome of a job that it predicts, and of that job only what was"
                    + " known beforehand is read: house, method, windows, quantities, weather of the day, crew.",
            "The score of a forecast is the continuous ranked probability score: how far the band that was predicted lies from what came, in the"
                    + " unit of the amount. Less is better; of one number it is how far that number is off. Tables or calibrated tables are"
                    + " called better or worse than the average only where the mean difference, job by job, is further from 0 than chance"
                    + " makes it one time in twenty (one-sided t test).",
            "Hours and material are predicted with the spread of rates, crews, windows and prices that the tables hold; the tables give a price"
                    + " as one number, which is what compare quotes, and it has no band to keep. Calibrated, material and price have the"
                    + " spread of the other jobs about what is predicted. Days are the hours over what a crew does in a day at the house."
                    + " Calls are those for leak damage within the years that a job was followed.",
            "Jobs whose house_id stands in the portfolio are predicted from the house as it was measured, others from what their records hold.");

    private static final int MOST_SEGMENTS = 12;

    private final BacktestResult result;

    BacktestText(BacktestResult result) {
        this.result = result;
    }

    String scope() {
        return Numbers.count(result.jobs(), "job", "jobs") + " in " + Numbers.count(result.parts(), "part", "parts")
                + ", "
                + (result.measured() == 0 ? "none" : Numbers.plain(result.measured(), 0))
                + " at a measured house of the portfolio.";
    }

    /** The answer first: whether the tool beats a plain average on jobs that it had not seen. */
    List<String> sentences() {
        List<String> lines = new ArrayList<>();
        for (Seer seer : List.of(Seer.CALIBRATED, Seer.TABLES)) {
            String name = seer == Seer.CALIBRATED ? "The calibrated tables" : "The tables as they are";
            lines.add(name + ": " + list(seer, Score.Verdict.BETTER, "better than a plain average a window for ", "")
                    + list(seer, Score.Verdict.NEITHER, "not surely better or worse for ", "; ")
                    + list(seer, Score.Verdict.WORSE, "worse than the average for ", "; ") + ".");
        }
        List<String> lost = amounts(Seer.CALIBRATED, Score.Verdict.WORSE);
        if (!lost.isEmpty()) {
            lines.add(
                    "For " + String.join(", ", lost)
                            + " a plain average per window predicts these jobs better than the calibrated tables do: use the average there.");
        }
        lines.add(bands());
        return lines;
    }

    private String list(Seer seer, Score.Verdict verdict, String before, String separator) {
        List<String> amounts = amounts(seer, verdict);
        if (amounts.isEmpty()) {
            return verdict == Score.Verdict.BETTER ? "better than a plain average a window for nothing" : "";
        }
        return separator + before + String.join(", ", amounts);
    }

    private List<String> amounts(Seer seer, Score.Verdict verdict) {
        return result.amounts().stream()
                .filter(amount -> result.score(amount, seer).verdict() == verdict)
                .map(JobAmount::word)
                .toList();
    }

    private String bands() {
        return "Of the jobs, within the calibrated band that was given 90%: "
                + result.amounts().stream()
                        .map(amount -> Numbers.percent(
                                        result.score(amount, Seer.CALIBRATED).within90(), 0)
                                + " for " + amount.word())
                        .collect(Collectors.joining(", "))
                + ".";
    }

    /** What was foreseen beside what came, over all jobs. */
    TableView totals() {
        TableView.Builder table = TableView.of("All jobs together, predicted beside what came")
                .texts("amount")
                .numbers("jobs", "came", "tables", "off", "calibrated", "off", "average a window", "off");
        for (JobAmount amount : result.amounts()) {
            List<String> cells = new ArrayList<>(List.of(
                    amount.label(),
                    Numbers.plain(result.score(amount, Seer.TABLES).jobs(), 0),
                    shown(amount, result.score(amount, Seer.TABLES).came())));
            for (Seer seer : Seer.values()) {
                Score score = result.score(amount, seer);
                cells.add(shown(amount, score.foresaw()));
                cells.add(Numbers.signed(100 * score.bias(), 1) + "%");
            }
            table.row(cells.toArray(String[]::new));
        }
        return table.build();
    }

    private static String shown(JobAmount amount, double value) {
        return amount.unit().equals("USD")
                ? Numbers.usd(value)
                : Numbers.plain(value, amount == JobAmount.CALLS ? 1 : 0);
    }

    /** The proper score and whether it beats the average. */
    TableView scores() {
        TableView.Builder table = TableView.of("Score of a job on unseen jobs, less is better; gain over the average")
                .texts("amount", "predicted by")
                .numbers("score", "of the average\u2019s", "gain", "error")
                .texts("verdict");
        for (Score score : result.scores()) {
            double base = result.score(score.amount(), Seer.AVERAGE).score();
            int decimals =
                    score.amount() == JobAmount.CALLS ? 3 : score.amount().decimals() + 1;
            boolean average = score.seer() == Seer.AVERAGE;
            table.row(
                    score.amount().word() + " (" + score.amount().unit() + ")",
                    score.seer().label(),
                    Numbers.plain(score.score(), decimals),
                    base == 0 ? "\u2013" : Numbers.percent(score.score() / base, 0),
                    average ? "\u2013" : Numbers.signed(score.gain(), decimals),
                    average ? "\u2013" : Numbers.plain(score.gainError(), decimals),
                    average ? "\u2013" : verdict(score));
        }
        return table.build();
    }

    private static String verdict(Score score) {
        return switch (score.verdict()) {
            case BETTER -> "better";
            case WORSE -> "worse";
            case NEITHER -> "cannot tell";
        };
    }

    /** Share of the jobs within each band, and how wide it is. */
    TableView coverage() {
        TableView.Builder table = TableView.of(
                        "Jobs within the bands that were given 50%, 80% and 90%; width of the last")
                .texts("amount", "predicted by")
                .numbers("within 50%", "within 80%", "within 90%", "width of 90%, over the mean");
        for (Score score : result.scores()) {
            boolean band = score.width() > 0;
            table.row(
                    score.amount().word(),
                    score.seer().label(),
                    band ? Numbers.percent(score.within50(), 0) : "one number",
                    band ? Numbers.percent(score.within80(), 0) : "\u2013",
                    band ? Numbers.percent(score.within90(), 0) : "\u2013",
                    band ? Numbers.percent(score.width(), 0) : "\u2013");
        }
        return table.build();
    }

    /** Bias of the calibrated tables, and of the others beside it, in the kinds of jobs of one amount. */
    TableView segments(JobAmount amount) {
        TableView.Builder table = TableView.of(amount.label() + ": what came over what was predicted, by kind of job")
                .texts("by", "kind")
                .numbers("jobs", "tables", "calibrated", "average a window");
        List<SegmentBias> own = result.segments().stream()
                .filter(row -> row.score().amount() == amount)
                .toList();
        own.stream()
                .filter(row -> row.score().seer() == Seer.TABLES)
                .sorted(Comparator.comparingDouble(
                        row -> -Math.abs(find(own, row, Seer.CALIBRATED).score().bias())))
                .limit(MOST_SEGMENTS)
                .forEach(row -> table.row(
                        row.factor(),
                        row.level(),
                        Numbers.plain(row.score().jobs(), 0),
                        percent(row),
                        percent(find(own, row, Seer.CALIBRATED)),
                        percent(find(own, row, Seer.AVERAGE))));
        return table.build();
    }

    private static SegmentBias find(List<SegmentBias> rows, SegmentBias like, Seer seer) {
        return rows.stream()
                .filter(row -> row.score().seer() == seer
                        && row.factor().equals(like.factor())
                        && row.level().equals(like.level()))
                .findFirst()
                .orElseThrow();
    }

    private static String percent(SegmentBias row) {
        return Numbers.signed(100 * row.score().bias(), 0) + "%";
    }
}
