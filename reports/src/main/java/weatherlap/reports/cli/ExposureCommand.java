package weatherlap.reports.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import weatherlap.reports.jobs.Exposure;

@Command(
        name = "exposure",
        description =
                "Shows how much driving rain walls get by the way they face, from hourly weather. Without --out nothing is written.",
        footer = {"", "Example:", "  weatherlap exposure weather.epw --out exposure"})
final class ExposureCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Parameters(
            paramLabel = "CLIMATE",
            description =
                    "Hourly weather: our table, EPW, NOAA ISD-Lite or NOAA global-hourly CSV; packed with gzip or not.")
    private Path climate;

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
