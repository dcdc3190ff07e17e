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
        description = "Ranks the assumptions by how much they move the answer, and says what to measure next.",
        footer = {
            "",
            "It reads all your houses into memory. Swings and worths come from as many as --houses says,",
            "shares from as many as --replicates.",
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
            description = "How often to run each house for what is luck, 1 to 1,000,000, whatever scenario.toml says"
                    + " (default: ${DEFAULT-VALUE}).")
    private int draws;

    @Option(
            names = "--points",
            paramLabel = "N",
            defaultValue = "16",
            description =
                    "Points in each Sobol' sequence, 2 to 1,048,576 (default: ${DEFAULT-VALUE}). A power of two is"
                            + " best.")
    private int points;

    @Option(
            names = "--replicates",
            paramLabel = "N",
            defaultValue = "60",
            description =
                    "How many sequences, 2 to 10,000 (default: ${DEFAULT-VALUE}). Each is shifted at random and takes"
                            + " the next house. How far they differ shows the error.")
    private int replicates;

    @Option(
            names = "--rows",
            paramLabel = "N",
            defaultValue = "6",
            description = "How many rows get a share of their own, 0 to 400 (default: ${DEFAULT-VALUE}): those with the"
                    + " widest swings.")
    private int rows;

    @Option(
            names = "--information",
            paramLabel = "N",
            defaultValue = "150",
            description = "Points for what it is worth to know a row, 50 to 1,000,000 (default: ${DEFAULT-VALUE}).")
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
