package weatherlap.reports.calibrate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import weatherlap.analysis.calibration.Calibration;
import weatherlap.analysis.calibration.FittedJob;
import weatherlap.analysis.calibration.GrossTiming;
import weatherlap.analysis.calibration.HeldOutError;
import weatherlap.analysis.calibration.StepFit;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.analysis.words.StepWords;
import weatherlap.reports.page.TableView;
import weatherlap.sim.method.Method;

/** A calibration in sentences and tables. */
final class CalibrationText {
    static final List<String> METHOD = List.of(
            "A job\u2019s person-minutes are the sum over the labor steps of minutes for one unit \u00d7 quantity \u00d7 the factors for cold,"
                    + " height, practice and lead-safe work. Facts that a record leaves out count as often as they hold in others;"
                    + " quantities that it leaves out (panels, walls, edges) are filled in for an ordinary job. A job whose house was"
                    + " measured is taken off that house.",
            "The estimator is a linear regression with the tables for a prior: each rate starts at the mean of its"
                    + " range, with the range for its uncertainty, and all of them share a pace that differs by a tenth from shop to"
                    + " shop (our judgment). Few jobs move the rates a little, many jobs a lot. No rate falls below zero. With no prior"
                    + " it would be ordinary least squares. A rate shown is the mean of what is believed of it, not its likeliest"
                    + " value, which lies about a percent lower: labor is a sum of rates, and only means keep it from coming out low"
                    + " over many jobs.",
            "Beside the rates each crew has a pace, drawn towards the others as far as its jobs leave it open, and the years a drift. The"
                    + " rates are those of an ordinary crew on the day of the last job: the mean of the crews, in which one far from the"
                    + " others counts little or nothing. An old job counts less, by half every records_half_life_years.",
            "A job is set aside when the log of what a robust fit leaves over is more than 3.5 robust standard deviations, up or down."
                    + " In that fit no job pulls harder than 1.345 deviations; chance alone takes about one job in 2,000 so far. A job"
                    + " whose hours agree to a tenth with its timings and what the rest takes elsewhere is kept. Nothing is set aside where fewer than 8 jobs have hours."
                    + " A timing is set aside by the same limit, judged by the other timings of its step and its range; where timed"
                    + " minutes leave none for the rest of a job, or differ by more than a tenth from the hours of a job that was timed"
                    + " whole, the hours are set aside and the timings stay.",
            "Error on unseen jobs: the jobs are split into parts, and rates fitted to the others predict each part,"
                    + " without its hours or its timed steps. A job\u2019s error is the log of hours taken over hours predicted, so half"
                    + " counts like double; its root mean square is shown as a percentage. The paired gain is the mean over the jobs of"
                    + " the tables\u2019 squared error less the fitted rates\u2019. Fitted rates or tables are called better only where"
                    + " it is further from 0 than chance makes it one time in twenty (one-sided t test).",
            "Steps that always occur together cannot be told apart from totals: their sum is learnt and shared among them by the width of"
                    + " their ranges, which shows in intervals that stay wide. Timing the steps of a few jobs tells them apart.",
            "A 90% interval should hold the true rate nine times in ten for shops like those that the tables describe; a shop far from"
                    + " every range is pulled towards it.");

    private static final int NAMED = 5;
    private static final int MOVED = 8;

    private final Calibration calibration;

    CalibrationText(Calibration calibration) {
        this.calibration = calibration;
    }

    /** What the fit rests on, in a line. */
    String scope() {
        long timed = calibration.jobs().stream()
                .filter(job -> !job.job().stepMinutes().isEmpty())
                .count();
        return Numbers.count(calibration.jobs().size(), "job", "jobs") + " with person-hours, "
                + (timed == 0 ? "none" : Numbers.plain(timed, 0)) + " of them with steps timed"
                + (calibration.skipped().isEmpty()
                        ? ""
                        : "; " + Numbers.count(calibration.skipped().size(), "job", "jobs")
                                + " without hours or timed steps left out: " + names(calibration.skipped()));
    }

    /** The answer first. */
    List<String> sentences() {
        List<String> lines = new ArrayList<>();
        lines.add(verdict());
        if (!kept().isEmpty()) {
            double ratio = sum(FittedJob::actualHours) / sum(FittedJob::tableHours);
            lines.add("The jobs took " + Numbers.plain(sum(FittedJob::actualHours), 0)
                    + " person-hours where the tables give "
                    + Numbers.plain(sum(FittedJob::tableHours), 0) + " (" + Numbers.signed(100 * (ratio - 1), 0)
                    + "%) and the fit " + Numbers.plain(sum(FittedJob::fittedHours), 0)
                    + ". About its fitted hours a job varies by " + Numbers.percent(calibration.noise(), 0)
                    + " (standard deviation).");
        }
        lines.add(movedSentence());
        lines.add(setAsideSentence());
        lines.addAll(typing());
        return lines;
    }

    /** What was typed wrong, most likely; empty where nothing was. */
    List<String> typing() {
        List<String> lines = new ArrayList<>();
        for (int people = 2; people <= 3; people++) {
            List<FittedJob> jobs = calibration.clockHours(people);
            if (!jobs.isEmpty()) {
                lines.add("Of these, " + jobs.size() + " took about " + (people == 2 ? "half" : "a third")
                        + " of the fitted hours: hours of the clock put down for the person-hours of a crew of "
                        + people + "? "
                        + names(jobs.stream().map(job -> job.job().id()).toList()) + ".");
            }
        }
        if (!calibration.grossTimings().isEmpty()) {
            lines.add("Timings set aside, too far from the others of their step or from its range: "
                    + calibration.grossTimings().stream()
                            .map(CalibrationText::timing)
                            .collect(Collectors.joining("; "))
                    + ".");
        }
        return lines;
    }

    private static String timing(GrossTiming timing) {
        return timing.job().id() + " " + timing.step().id() + " " + Numbers.plain(timing.minutes(), 1) + " min (about "
                + Numbers.plain(timing.expectedMinutes(), 1) + " expected)";
    }

    private String verdict() {
        if (calibration.heldOut().isEmpty()) {
            return "Too few jobs to tell whether the fitted rates do better: the tables move a little, and no job was"
                    + " set aside as a test.";
        }
        HeldOutError error = calibration.heldOut().orElseThrow();
        String numbers = " on jobs that the fit had not seen they miss by " + miss(error.fitted()) + ", the tables by "
                + miss(error.tables()) + " (" + times(error) + ").";
        return switch (error.verdict()) {
            case FITTED -> "Use the fitted rates:" + numbers;
            case TABLES -> "Keep the tables, the fitted rates do worse:" + numbers;
            case EITHER -> "These jobs cannot tell whether the fitted rates or the tables do better:" + numbers;
        };
    }

    /** Job by job, how far apart the two are for what chance makes of so many jobs. */
    private static String times(HeldOutError error) {
        return error.gainError() > 0
                ? "job by job, " + Numbers.plain(Math.abs(error.gain()) / error.gainError(), 1)
                        + " times as far apart as chance alone sets them"
                : "job by job, no difference";
    }

    /** A root mean square of logs as a percentage of a job. */
    private static String miss(double log) {
        return Numbers.percent(Math.expm1(log), 1);
    }

    private String movedSentence() {
        List<StepFit> apart = calibration.steps().stream()
                .filter(fit -> !fit.holds(fit.priorMinutes()))
                .sorted(Comparator.comparingDouble(fit -> -Math.abs(change(fit))))
                .toList();
        return apart.isEmpty()
                ? "Of " + Numbers.count(calibration.steps().size(), "rate", "rates")
                        + " none has moved so far that its 90% interval leaves the" + " table\u2019s value out."
                : "Of " + Numbers.count(calibration.steps().size(), "rate", "rates") + " " + apart.size()
                        + (apart.size() == 1 ? " has" : " have")
                        + " moved so far that the 90% interval leaves the table\u2019s value out: "
                        + names(apart.stream()
                                .map(fit -> name(calibration, fit) + " " + percent(change(fit)))
                                .toList())
                        + ".";
    }

    /** What is done, told apart from a step of another method that is called the same. */
    static String name(Calibration calibration, StepFit fit) {
        return StepWords.name(
                fit.step(), calibration.steps().stream().map(StepFit::step).toList(), EnumSet.allOf(Method.class));
    }

    String setAsideSentence() {
        return calibration.outliers().isEmpty()
                ? "No job is so far from the others that it was set aside."
                : "Set aside, to be looked into: "
                        + names(calibration.outliers().stream()
                                .map(job -> job.job().id() + " (" + AsideText.of(job) + ")")
                                .toList())
                        + ".";
    }

    private static String names(List<String> names) {
        String first = names.stream().limit(NAMED).collect(Collectors.joining("; "));
        return names.size() <= NAMED ? first : first + "; and " + (names.size() - NAMED) + " more";
    }

    /** The tables beside the fit. */
    TableView keyFigures() {
        TableView.Builder table =
                TableView.of("Jobs that were not set aside").texts("measure").numbers("tables", "fitted");
        table.row(
                "person-hours of all jobs, together",
                hours(sum(FittedJob::tableHours)),
                hours(sum(FittedJob::fittedHours)));
        calibration.heldOut().ifPresent(error -> table.row(
                        "error on jobs that the fit had not seen (" + error.folds() + " parts), root mean square",
                        miss(error.tables()),
                        miss(error.fitted()))
                .row(
                        "the same, person-hours of a job",
                        Numbers.plain(error.tablesHours(), 1),
                        Numbers.plain(error.fittedHours(), 1)));
        return table.build();
    }

    private static String hours(double hours) {
        return Numbers.plain(hours, 0);
    }

    /** Every step in table order. */
    TableView rates() {
        return steps("Person-minutes for one unit of the driver", calibration.steps());
    }

    /** The steps whose rates moved most, as a share of the table's. */
    TableView mostMoved() {
        return steps(
                "Moved most",
                calibration.steps().stream()
                        .sorted(Comparator.comparingDouble(fit -> -Math.abs(change(fit))))
                        .limit(MOVED)
                        .toList());
    }

    private static TableView steps(String caption, List<StepFit> fits) {
        TableView.Builder table = TableView.of(caption)
                .texts("step", "done", "for one")
                .numbers("before", "fitted", "low 90%", "high 90%", "change", "jobs");
        fits.forEach(fit -> table.row(
                fit.step().id(),
                fit.step().tradeName(),
                InWords.of(fit.step().driver()),
                minutes(fit.priorMinutes()),
                minutes(fit.fittedMinutes()),
                minutes(fit.lowMinutes()),
                minutes(fit.highMinutes()),
                percent(change(fit)),
                Numbers.plain(fit.jobs(), 0)));
        return table.build();
    }

    private static String minutes(double minutes) {
        return Numbers.plain(minutes, 2);
    }

    private static String percent(double fraction) {
        return Numbers.signed(100 * fraction, 0) + "%";
    }

    private static double change(StepFit fit) {
        return fit.priorMinutes() == 0 ? 0 : fit.fittedMinutes() / fit.priorMinutes() - 1;
    }

    /** One row a job that was left out. */
    TableView setAside() {
        TableView.Builder table = TableView.of(setAsideSentence())
                .texts("job", "method", "crew", "why")
                .numbers("took (person-h)", "fitted", "by the tables", "robust deviations");
        calibration
                .outliers()
                .forEach(job -> table.row(
                        job.job().id(),
                        weatherlap.charts.kit.MethodStyle.of(job.job().method()).label(),
                        job.job().crew().orElse("\u2013"),
                        AsideText.of(job),
                        Numbers.plain(job.actualHours(), 1),
                        Numbers.plain(job.fittedHours(), 1),
                        Numbers.plain(job.tableHours(), 1),
                        Numbers.signed(job.robustDeviations(), 1)));
        return table.build();
    }

    private List<FittedJob> kept() {
        return calibration.jobs().stream().filter(job -> !job.outlier()).toList();
    }

    private double sum(ToDoubleFunction<FittedJob> hours) {
        return kept().stream().mapToDouble(hours).sum();
    }
}
