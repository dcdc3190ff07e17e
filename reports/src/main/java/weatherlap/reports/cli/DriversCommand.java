package weatherlap.reports.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import weatherlap.reports.jobs.Drivers;
import weatherlap.reports.options.Bounds;
import weatherlap.reports.options.InputOptions;
import weatherlap.reports.options.MethodsOption;
import weatherlap.reports.options.OutputOptions;
import weatherlap.reports.options.SampleOption;

@Command(
        name = "drivers",
        description =
                "Ranks the assumptions by what they do to the answer: Sobol' indices, swings, and what to measure next.",
        footer = {
            "",
            "All houses are read and held in memory: of --houses of them swings and worths are told, of",
            "--replicates of them shares of the variance.",
            "",
            "Examples:",
            "  weatherlap drivers --out drivers",
            "  weatherlap drivers my-houses --houses 24 --points 32 --out drivers"
        })
final class DriversCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Mixin
    private InputOptions input;

    @Mixin
    private MethodsOption methods;

    @Mixin
    private final SampleOption sample = new SampleOption(12);

    @Option(
            names = "--draws",
            paramLabel = "N",
            defaultValue = "32",
            description =
                    "Draws a house of what varies by luck, 1 to 1,000,000, whatever scenario.toml says. Else: ${DEFAULT-VALUE}.")
    private int draws;

    @Option(
            names = "--points",
            paramLabel = "N",
            defaultValue = "16",
            description =
                    "Points of each Sobol' sequence, 2 to 1,048,576, best a power of two. Else: ${DEFAULT-VALUE}.")
    private int points;

    @Option(
            names = "--replicates",
            paramLabel = "N",
            defaultValue = "60",
            description =
                    "Sequences, 2 to 10,000, each shifted at random and with a house of its own, in turn; they show the error. Else: ${DEFAULT-VALUE}.")
    private int replicates;

    @Option(
            names = "--rows",
            paramLabel = "N",
            defaultValue = "6",
            description =
                    "Rows of the tables, 0 to 400, that get indices by themselves, those with the widest swings. Else: ${DEFAULT-VALUE}.")
    private int rows;

    @Option(
            names = "--information",
            paramLabel = "N",
            defaultValue = "150",
            description = "Points for the worth of knowing a row, 50 to 1,000,000. Else: ${DEFAULT-VALUE}.")
    private int information;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        Bounds.within(spec, "--draws", draws, 1, 1_000_000);
        Bounds.within(spec, "--points", points, 2, 1 << 20);
        Bounds.within(spec, "--replicates", replicates, 2, 10_000);
        Bounds.within(spec, "--rows", rows, 0, 400);
        Bounds.within(spec, "--information", information, 50, 1_000_000);
        Drivers.Effort effort = new Drivers.Effort(sample.houses(), draws, points, replicates, rows, information);
        new Drivers(methods.in(input.paths()), output.request(), effort).run(common.messages());
        return 0;
    }
}
