package weatherlap.analysis.calibration;

import weatherlap.analysis.columns.StudySchemas;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.analysis.tables.TableBuilder;

/** The tables that {@code calibrate} writes. */
public final class CalibrationTables {
    private CalibrationTables() {}

    /** One row a labour step, in table order. */
    public static ResultTable steps(Calibration calibration) {
        TableBuilder table = new TableBuilder(StudySchemas.LABOUR_FIT);
        for (StepFit fit : calibration.steps()) {
            table.row(
                    fit.step().id(),
                    fit.priorMinutes(),
                    fit.fittedMinutes(),
                    fit.lowMinutes(),
                    fit.highMinutes(),
                    fit.jobs());
        }
        return table.build();
    }

    /** One row a job with person-hours, in the order of the records. */
    public static ResultTable jobs(Calibration calibration) {
        TableBuilder table = new TableBuilder(StudySchemas.JOB_FIT);
        for (FittedJob job : calibration.jobs()) {
            table.row(
                    job.job().id(),
                    job.job().method().word(),
                    job.job().crew().orElse(""),
                    job.actualHours(),
                    job.tableHours(),
                    job.fittedHours(),
                    job.residualFraction(),
                    job.robustDeviations(),
                    job.outlier() ? "yes" : "no");
        }
        return table.build();
    }
}
