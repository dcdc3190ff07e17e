package weatherlap.reports.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import weatherlap.reports.jobs.CheckInputs;

@Command(
        name = "check",
        description = "Finds every problem in the tables. Nothing is simulated, nothing is written.",
        footer = {"", "Example:", "  weatherlap check my-houses"})
final class CheckCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Parameters(paramLabel = "PORTFOLIO", description = "Folder with houses.csv, elevations.csv, openings.csv.")
    private Path portfolio;

    @Mixin
    private InputOptions input;

    @Override
    public Integer call() {
        new CheckInputs(input.paths(portfolio)).run(common.messages());
        return 0;
    }
}
