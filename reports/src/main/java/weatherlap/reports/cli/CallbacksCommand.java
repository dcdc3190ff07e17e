package weatherlap.reports.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.jobs.Callbacks;
import weatherlap.reports.options.AssumptionOptions;
import weatherlap.reports.options.OutputOptions;
import weatherlap.reports.options.WeatherOptions;

@Command(
        name = "callbacks",
        description =
                "Sets how much windows leak by your own jobs and service calls. Writes that as assumption tables.",
        footer = {
            "",
            "Examples, with a made-up shop:",
            "  weatherlap generate --houses 1 --jobs 200 --out made-up-shop",
            "  weatherlap callbacks made-up-shop --out fitted",
            "  weatherlap compare my-houses --assumptions fitted/assumptions --out report"
        })
final class CallbacksCommand implements Callable<Integer> {
    private static final double LONGEST_LAG_YEARS = 20;

    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Parameters(
            paramLabel = "JOBS_FOLDER",
            description =
                    "Folder with jobs.csv (job_id, method, openings, finished, followed_until and whatever else you"
                            + " know) and callbacks.csv, one service call per row (job_id, opening, called, cause, damage, cost_usd, paid_by).")
    private Path jobs;

    @Option(
            names = "--portfolio",
            paramLabel = "FOLDER",
            description = "Folder of measured houses. A job that names one by house_id gets its measurements from"
                    + " there.")
    private Path portfolio;

    @Mixin
    private AssumptionOptions assumptions;

    @Mixin
    private WeatherOptions weather;

    @Option(
            names = "--lag",
            paramLabel = "YEARS",
            description = "Average years from the damage to the call, 0 to 20 (default: fitted, from 0.1 to 2).")
    private Double lag;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        if (lag != null && !(lag >= 0 && lag <= LONGEST_LAG_YEARS)) {
            throw new ParameterException(spec.commandLine(), "--lag (" + lag + ") must be 0 to 20 years");
        }
        InputPaths paths = new InputPaths(
                Optional.ofNullable(portfolio),
                assumptions.folder(),
                weather.climate(),
                weather.site(),
                assumptions.changes());
        OptionalDouble given = lag == null ? OptionalDouble.empty() : OptionalDouble.of(lag);
        new Callbacks(jobs, paths, given, output.request()).run(common.messages());
        return 0;
    }
}
