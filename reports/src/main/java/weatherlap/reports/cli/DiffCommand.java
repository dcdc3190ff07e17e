package weatherlap.reports.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import weatherlap.reports.diff.DiffReports;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.options.OutputOptions;
import weatherlap.reports.options.SampleOption;
import weatherlap.reports.options.WeatherOptions;

@Command(
        name = "diff",
        description =
                "Shows what changed between two reports: what they read, which assumptions, which houses, and how much"
                        + " each changed row moved the answer.",
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {
            "0:the same to the byte",
            "1:they differ, or " + Failures.BROKE,
            "2:a mistake in the command or in what it read"
        },
        footer = {
            "",
            "Examples:",
            "  weatherlap diff report report-new-wages",
            "  weatherlap diff report again my-houses --out what-changed"
        })
final class DiffCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Parameters(index = "0", paramLabel = "BEFORE", description = "Folder of the earlier report.")
    private Path before;

    @Parameters(index = "1", paramLabel = "AFTER", description = "Folder of the later report.")
    private Path after;

    @Parameters(
            index = "2",
            arity = "0..1",
            paramLabel = "PORTFOLIO",
            description = "Folder of the houses that both reports read (default: the bundled demo).")
    private Path portfolio;

    @Mixin
    private WeatherOptions weather;

    @Mixin
    private final SampleOption sample = new SampleOption(100);

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        InputPaths paths = new InputPaths(
                Optional.ofNullable(portfolio), Optional.empty(), weather.climate(), weather.site(), List.of());
        boolean same =
                new DiffReports(before, after, paths, sample.houses(), output.requestIfNamed()).run(common.messages());
        return same ? 0 : 1;
    }
}
