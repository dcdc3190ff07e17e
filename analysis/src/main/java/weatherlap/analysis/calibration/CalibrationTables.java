package weatherlap.analysis.calibration;

import java.util.Locale;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.tables.ResultTable;

/** The tables that {@code calibrate} writes. */
public final class CalibrationTables {
    public static final Layout<StepFit> STEPS = Layout.<StepFit>of("labour-fit.csv", "Labor fit", "One labor step.")
            .text("step_id", "step", "key in labour-steps.csv", fit -> fit.step()
                    .id())
            .number(
                    "prior_minutes",
                    "before",
                    "person-min",
                    4,
                    "for one unit of the driver, as assumed",
                    StepFit::priorMinutes)
            .number(
                    "fitted_minutes",
                    "fitted",
                    "person-min",
                    4,
                    "the same with the jobs weighed in",
                    StepFit::fittedMinutes)
            .number("standard_error", "error", "person-min", 4, "standard error of it", StepFit::standardError)
            .interval("person-min", 4, StepFit::lowMinutes, StepFit::highMinutes)
            .whole("jobs", "jobs", "records that say something about it", StepFit::jobs)
            .build();

    public static final Layout<FittedJob> JOBS = Layout.<FittedJob>of(
                    "job-fit.csv", "Job fit", "One job with person-hours.")
            .text("job_id", "job", "key in the job records", fit -> fit.job().id())
            .method(fit -> fit.job().method())
            .optionalText("crew", "crew", "as in the job records", fit -> fit.job()
                    .crew()
                    .orElse(""))
            .number("actual_hours", "took", "person-h", 2, "as in the job records", FittedJob::actualHours)
            .number("prior_hours", "by the tables", "person-h", 2, "by the minutes as assumed", FittedJob::tableHours)
            .number("fitted_hours", "fitted", "person-h", 2, "by the fitted minutes", FittedJob::fittedHours)
            .number(
                    "residual_fraction",
                    "left over",
                    "fraction",
                    3,
                    "hours taken over hours fitted, less 1",
                    FittedJob::residualFraction)
            .number(
                    "robust_deviations",
                    "deviations",
                    "",
                    2,
                    "log of what a robust fit leaves over, in its robust standard deviations",
                    FittedJob::robustDeviations)
            .yesNo("set_aside", "set aside", "yes where the hours of the job are not fitted", FittedJob::outlier)
            .optionalText(
                    "aside_for",
                    "for",
                    "timings where they contradict the hours; rest, whole where that took too much or little; empty where not set aside",
                    fit -> fit.outlier() ? fit.aside().name().toLowerCase(Locale.ROOT) : "")
            .build();

    private CalibrationTables() {}

    /** One row a labour step, in table order. */
    public static ResultTable steps(Calibration calibration) {
        return ResultTable.of(STEPS, calibration.steps());
    }

    /** One row a job with person-hours, in the order of the records. */
    public static ResultTable jobs(Calibration calibration) {
        return ResultTable.of(JOBS, calibration.jobs());
    }
}
