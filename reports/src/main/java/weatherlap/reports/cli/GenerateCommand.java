package weatherlap.reports.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import weatherlap.reports.jobs.Generate;
import weatherlap.reports.options.Bounds;
import weatherlap.reports.options.OutputOptions;
import weatherlap.reports.workbook.WriteShortTemplate;
import weatherlap.reports.workbook.WriteTemplate;

@Command(
        name = "generate",
        description = "Makes up houses to try the program on, or writes tables for you to fill in.",
        footer = {
            "",
            "Examples:",
            "  weatherlap generate --template --out my-houses",
            "  weatherlap generate --template --out my-houses.xlsx",
            "  weatherlap generate --template --short --out my-windows.xlsx",
            "  weatherlap generate --houses 500 --seed 7 --climate --out made-up"
        })
final class GenerateCommand implements Callable<Integer> {
    private static final long MOST = 1_000_000;
    private static final int MOST_JOBS = 100_000;

    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Option(names = "--houses", paramLabel = "N", description = "How many houses to make, 1 to 1,000,000.")
    private Long houses;

    @Option(
            names = "--template",
            description = "Write tables to fill in, with one example house and notes, not made-up houses.")
    private boolean template;

    @Option(
            names = "--records",
            description = "With --template: also write tables for finished jobs and service calls, for calibrate and"
                    + " callbacks.")
    private boolean records;

    @Option(
            names = "--short",
            description =
                    "With --template: one table of eight columns, a row for each window. The program takes what is"
                            + " usual for the rest.")
    private boolean shortTable;

    @Option(
            names = "--seed",
            paramLabel = "S",
            description = "Whole number (default: 1). The same seed gives the same houses.")
    private Long seed;

    @Option(
            names = "--mix",
            paramLabel = "FILE",
            description = "Table that says how common each story count, cladding, window and so on is. Or new-york or"
                    + " national, which come with the program (default: new-york).")
    private Path mix;

    @Option(
            names = "--climate",
            description =
                    "Also write the weather of the invented town, as climate.csv, and a site.toml that puts the houses"
                            + " there.")
    private boolean climate;

    @Option(
            names = "--jobs",
            paramLabel = "N",
            description = "Also write N job records of a made-up shop, 0 to 100,000 (default: 0). To try calibrate on:"
                    + " jobs.csv, with the true rates in true-rates.csv. To try callbacks on: callbacks.csv;"
                    + " true-callbacks.csv has the true level of leaks.")
    private Integer jobs;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        if (template == (houses != null)) {
            throw new ParameterException(
                    spec.commandLine(), "say --houses N (made-up houses) or --template (tables to fill in)");
        }
        boolean madeUp = seed != null || mix != null || climate || jobs != null;
        if (template && madeUp) {
            throw new ParameterException(
                    spec.commandLine(), "--seed, --mix, --climate and --jobs go with --houses, not with --template");
        }
        if (records && !template) {
            throw new ParameterException(
                    spec.commandLine(), "--records goes with --template; for records of a made-up shop use --jobs");
        }
        if (shortTable && (!template || records)) {
            throw new ParameterException(spec.commandLine(), "--short goes with --template, without --records");
        }
        if (shortTable) {
            new WriteShortTemplate(output.request()).run(common.messages());
            return 0;
        }
        if (template) {
            new WriteTemplate(records, output.request()).run(common.messages());
            return 0;
        }
        Bounds.within(spec, "--houses", houses, 1, MOST);
        int records = jobs == null ? 0 : jobs;
        Bounds.within(spec, "--jobs", records, 0, MOST_JOBS);
        new Generate(houses, seed == null ? 1 : seed, Optional.ofNullable(mix), climate, records, output.request())
                .run(common.messages());
        return 0;
    }
}
