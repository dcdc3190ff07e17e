package weatherlap.reports.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import weatherlap.reports.jobs.Calibrate;
import weatherlap.reports.options.AssumptionOptions;
import weatherlap.reports.options.OutputOptions;

@Command(
        name = "calibrate",
        description = "Fits the labour rates to records of finished jobs and writes them as assumption tables.",
        footer = {
            "",
            "Examples, with made-up job records:",
            "  weatherlap generate --houses 1 --jobs 40 --out made-up-shop",
            "  weatherlap calibrate made-up-shop/jobs.csv --out fitted",
            "  weatherlap compare my-houses --assumptions fitted/assumptions --out report"
        })
final class CalibrateCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Parameters(
            paramLabel = "JOBS.csv",
            description =
                    "Table of finished jobs, one a row: job_id, method, openings, person_hours and what else is known.")
    private Path jobs;

    @Mixin
    private AssumptionOptions assumptions;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        new Calibrate(jobs, assumptions.folder(), assumptions.changes(), output.request()).run(common.messages());
        return 0;
    }
}
