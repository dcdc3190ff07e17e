package weatherlap.reports.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.jobs.RunBacktest;
import weatherlap.reports.options.AssumptionOptions;
import weatherlap.reports.options.OutputOptions;
import weatherlap.reports.options.WeatherOptions;

@Command(
        name = "backtest",
        description =
                "Shows what a run expected of finished jobs next to what happened: hours, days, material, price, calls.",
        footer = {
            "",
            "Example, with a made-up shop:",
            "  weatherlap generate --houses 1 --jobs 60 --out made-up-shop",
            "  weatherlap backtest made-up-shop --jobs made-up-shop/jobs.csv --out backtest"
        })
final class BacktestCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Parameters(
            paramLabel = "PORTFOLIO",
            description =
                    "Folder of measured houses. A job that names one by house_id is predicted from it, any other from its record.")
    private Path portfolio;

    @Option(
            names = "--jobs",
            paramLabel = "JOBS.csv",
            required = true,
            description = "Table of finished jobs, 12 or more. A job-items.csv next to it is read too.")
    private Path jobs;

    @Option(
            names = "--callbacks",
            paramLabel = "CALLS.csv",
            description = "Table of service calls after those jobs (default: calls are not judged).")
    private Path calls;

    @Mixin
    private AssumptionOptions assumptions;

    @Mixin
    private WeatherOptions weather;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        InputPaths paths = new InputPaths(
                Optional.of(portfolio), assumptions.folder(), weather.climate(), weather.site(), assumptions.changes());
        new RunBacktest(
                        paths,
                        InputPaths.table(jobs, "jobs.csv"),
                        Optional.ofNullable(calls).map(file -> InputPaths.table(file, "callbacks.csv")),
                        output.request())
                .run(common.messages());
        return 0;
    }
}
