package weatherlap.reports.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import weatherlap.reports.jobs.Drivers;

@Command(
        name = "drivers",
        description =
                "Ranks the assumptions by what they do to the answer: Sobol' indices, swings, and what to measure next.",
        footer = {
            "",
            "Examples:",
            "  weatherlap drivers --out drivers",
            "  weatherlap drivers my-houses --houses 24 --points 64 --out drivers"
        })
final class DriversCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Parameters(
            paramLabel = "PORTFOLIO",
            arity = "0..1",
            description = "Folder with houses.csv, elevations.csv, openings.csv; else the bundled demo.")
    private Path portfolio;

    @Mixin
    private InputOptions input;

    @Option(
            names = "--houses",
            paramLabel = "N",
            defaultValue = "12",
            description = "Houses to simulate, at even steps through the portfolio. Else ${DEFAULT-VALUE}.")
    private int houses;

    @Option(
            names = "--draws",
            paramLabel = "N",
            defaultValue = "32",
            description = "Draws a house of what varies by luck. Else ${DEFAULT-VALUE}.")
    private int draws;

    @Option(
            names = "--points",
            paramLabel = "N",
            defaultValue = "32",
            description = "Points of each Sobol' sequence, best a power of two. Else ${DEFAULT-VALUE}.")
    private int points;

    @Option(
            names = "--replicates",
            paramLabel = "N",
            defaultValue = "4",
            description = "Sequences, each shifted at random; they show the error. Else ${DEFAULT-VALUE}.")
    private int replicates;

    @Option(
            names = "--rows",
            paramLabel = "N",
            defaultValue = "8",
            description = "Rows with the widest swings that get indices by themselves. Else ${DEFAULT-VALUE}.")
    private int rows;

    @Option(
            names = "--information",
            paramLabel = "N",
            defaultValue = "400",
            description = "Points for the worth of knowing a row. Else ${DEFAULT-VALUE}.")
    private int information;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        within("--houses", houses, 1, 100_000);
        within("--draws", draws, 1, 1_000_000);
        within("--points", points, 2, 1 << 20);
        within("--replicates", replicates, 2, 1000);
        within("--rows", rows, 0, 400);
        within("--information", information, 50, 1_000_000);
        Drivers.Effort effort = new Drivers.Effort(houses, draws, points, replicates, rows, information);
        new Drivers(input.paths(portfolio), output.request(), effort).run(common.messages());
        return 0;
    }

    private void within(String name, int value, int low, int high) {
        if (value < low || value > high) {
            throw new ParameterException(
                    spec.commandLine(), name + " (" + value + ") must be from " + low + " to " + high);
        }
    }
}
