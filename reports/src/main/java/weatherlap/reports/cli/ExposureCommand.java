package weatherlap.reports.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import weatherlap.reports.jobs.Exposure;
import weatherlap.reports.options.OutputOptions;
import weatherlap.reports.options.SetOptions;

@Command(
        name = "exposure",
        description = "Shows how much driving rain a wall gets by the way it faces, from hourly weather.",
        footer = {
            "",
            "Examples, the second with weather that comes with the program, the others with made-up weather:",
            "  weatherlap generate --houses 1 --climate --out made-up",
            "  weatherlap exposure newark",
            "  weatherlap exposure made-up/climate.csv",
            "  weatherlap exposure made-up/climate.csv --out exposure"
        })
final class ExposureCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Parameters(
            paramLabel = "CLIMATE",
            arity = "1..*",
            description =
                    "Hourly weather of one place: a CSV of your own, EPW, ISD-Lite or global-hourly CSV, packed with"
                            + " gzip or not. Several files are read as one record. Or name a year that comes with the program: newark, kennedy,"
                            + " laguardia, seattle.")
    private List<Path> climate;

    @Mixin
    private SetOptions set;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        new Exposure(climate, set.changes(), output.requestIfNamed()).run(common.messages());
        return 0;
    }
}
