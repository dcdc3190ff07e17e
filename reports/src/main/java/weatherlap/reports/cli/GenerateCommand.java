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
import weatherlap.reports.workbook.WriteTemplate;

@Command(
        name = "generate",
        description = "Writes a portfolio of made-up houses, or one to fill in.",
        footer = {
            "",
            "Examples:",
            "  weatherlap generate --template --out my-houses",
            "  weatherlap generate --template --out my-houses.xlsx",
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
            description = "Instead of made-up houses, write tables to fill in, with one example house and notes.")
    private boolean template;

    @Option(
            names = "--records",
            description = "With --template: tables for jobs done and service calls too, for calibrate and callbacks.")
    private boolean records;

    @Option(
            names = "--seed",
            paramLabel = "S",
            description = "Whole number; the same seed gives the same houses. Else: 1.")
    private Long seed;

    @Option(
            names = "--mix",
            paramLabel = "FILE",
            description =
                    "Table of the shares of stories, claddings, windows and the like; or new-york or national, which come with the"
                            + " program. Else: new-york.")
    private Path mix;

    @Option(
            names = "--climate",
            description =
                    "Write the weather of the invented town too, as climate.csv, and a site.toml that says it is theirs.")
    private boolean climate;

    @Option(
            names = "--jobs",
            paramLabel = "N",
            description =
                    "Write so many job records of a made-up shop too, 0 to 100,000, as jobs.csv, with its rates in"
                            + " true-rates.csv, to try calibrate on, and its service calls, callbacks.csv, with their level in"
                            + " true-callbacks.csv, to try callbacks on. Else: 0.")
    private Integer jobs;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        if (template == (houses != null)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "one of --houses N (made-up houses) and --template (tables to fill in) is needed");
        }
        boolean madeUp = seed != null || mix != null || climate || jobs != null;
        if (template && madeUp) {
            throw new ParameterException(
                    spec.commandLine(), "--seed, --mix, --climate and --jobs go with --houses, not with --template");
        }
        if (records && !template) {
            throw new ParameterException(
                    spec.commandLine(), "--records goes with --template; --jobs makes records of a made-up shop");
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
