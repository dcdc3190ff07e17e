package weatherlap.analysis.backtest;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.columns.LayoutBuilder;
import weatherlap.analysis.tables.ResultTable;

/** The tables that {@code backtest} writes. */
public final class BacktestTables {
    /** One forecast of one amount of one job. */
    public record Row(Trial trial, Seer seer) {
        Forecast forecast() {
            return trial.by(seer);
        }
    }

    public static final Layout<Row> JOBS = foreseen(
                    Layout.<Row>of(
                                    "backtest-jobs.csv",
                                    "Backtest jobs",
                                    "One amount of one job, predicted by one of three.")
                            .text("job_id", "job", "key in the job records", row -> row.trial()
                                    .job()
                                    .id()),
                    row -> row.trial().amount(),
                    Row::seer)
            .number("came", "came", "as amount", 4, "as the record has it", row -> row.trial()
                    .came())
            .number("foreseen_mean", "predicted", "as amount", 4, "mean of what was predicted", row -> row.forecast()
                    .mean())
            .number("p05", "5%", "as amount", 4, "one in twenty is below", row -> row.forecast()
                    .quantile(0.05))
            .number("p95", "95%", "as amount", 4, "one in twenty is above", row -> row.forecast()
                    .quantile(0.95))
            .number("below", "below", "fraction", 4, "chance given to less than came", row -> row.forecast()
                    .below(row.trial().came()))
            .number("up_to", "up to", "fraction", 4, "chance given to no more than came", row -> row.forecast()
                    .upTo(row.trial().came()))
            .number("score", "score", "as amount", 4, "continuous ranked probability score", row -> row.trial()
                    .score(row.seer()))
            .build();

    public static final Layout<Score> SCORES = scores(foreseen(
                    Layout.of("backtest-scores.csv", "Backtest scores", "One amount, predicted by one of three."),
                    Score::amount,
                    Score::seer))
            .build();

    public static final Layout<SegmentBias> SEGMENTS = foreseen(
                    Layout.<SegmentBias>of(
                            "backtest-segments.csv",
                            "Backtest segments",
                            "One amount in one kind of jobs, of five or more, predicted by one of three."),
                    row -> row.score().amount(),
                    row -> row.score().seer())
            .text("factor", "by", "what the jobs are told apart by", SegmentBias::factor)
            .text("level", "level", "of the factor", SegmentBias::level)
            .whole("jobs", "jobs", "of that kind", row -> row.score().jobs())
            .number(
                    "bias_fraction",
                    "bias",
                    "fraction",
                    4,
                    "what came over what was predicted, less 1",
                    row -> row.score().bias())
            .number("within_90", "within 90%", "fraction", 4, "jobs within the band given 90%", row -> row.score()
                    .within90())
            .build();

    /** One point of a curve. */
    public record Point(CalibrationCurve curve, int step) {}

    public static final Layout<Point> CURVES = foreseen(
                    Layout.<Point>of(
                            "backtest-curves.csv",
                            "Backtest curves",
                            "One chance, of one amount, given by one of three."),
                    point -> point.curve().amount(),
                    point -> point.curve().seer())
            .number(
                    "chance",
                    "chance",
                    "fraction",
                    2,
                    "that was given",
                    row -> row.step() / (double) CalibrationCurve.STEPS)
            .number("seen", "seen", "fraction", 4, "share of the jobs at or below what was given it", row -> row.curve()
                    .seen()
                    .get(row.step()))
            .build();

    private BacktestTables() {}

    /** What is foreseen and by whom, which every row says. */
    private static <T> LayoutBuilder<T> foreseen(
            LayoutBuilder<T> layout, Function<T, JobAmount> amount, Function<T, Seer> seer) {
        return layout.text("amount", "amount", "hours, days, material, price or calls", row -> amount.apply(row)
                        .word())
                .text("foreseen_by", "predicted by", "tables, calibrated or average", row -> seer.apply(row)
                        .word());
    }

    private static LayoutBuilder<Score> scores(LayoutBuilder<Score> layout) {
        return layout.whole("jobs", "jobs", "that kept it", Score::jobs)
                .number("score", "score", "as amount", 4, "mean continuous ranked probability score", Score::score)
                .number("gain", "gain", "as amount", 4, "mean score of the average a window, less this", Score::gain)
                .number("gain_error", "error", "as amount", 4, "standard error of the gain", Score::gainError)
                .number(
                        "bias_fraction",
                        "bias",
                        "fraction",
                        4,
                        "what came over what was predicted, less 1",
                        Score::bias)
                .number("within_50", "within 50%", "fraction", 4, "jobs within the band given 50%", Score::within50)
                .number("within_80", "within 80%", "fraction", 4, "jobs within the band given 80%", Score::within80)
                .number("within_90", "within 90%", "fraction", 4, "jobs within the band given 90%", Score::within90)
                .number("width_90", "width", "fraction", 4, "of the 90% band, over the mean predicted", Score::width);
    }

    /** All four. */
    public static List<ResultTable> of(BacktestResult result) {
        List<Row> rows = new ArrayList<>();
        result.trials().forEach(trial -> trial.foreseen().keySet().forEach(seer -> rows.add(new Row(trial, seer))));
        List<Point> points = new ArrayList<>();
        result.curves().forEach(curve -> {
            for (int step = 0; step <= CalibrationCurve.STEPS; step++) {
                points.add(new Point(curve, step));
            }
        });
        return List.of(
                ResultTable.of(JOBS, rows),
                ResultTable.of(SCORES, result.scores()),
                ResultTable.of(SEGMENTS, result.segments()),
                ResultTable.of(CURVES, points));
    }
}
