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

@Command(
        name = "generate",
        description = "Writes a synthetic portfolio.",
        footer = {"", "Example:", "  weatherlap generate --houses 500 --seed 7 --climate --out made-up"})
final class GenerateCommand implements Callable<Integer> {
    private static final long MOST = 1_000_000;
    private static final int MOST_JOBS = 100_000;

    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Option(names = "--houses", paramLabel = "N", required = true, description = "How many, 1 to 1,000,000.")
    private long houses;

    @Option(names = "--seed", paramLabel = "S", description = "The same seed gives the same houses. Else: 1.")
    private long seed = 1;

    @Option(
            names = "--mix",
            paramLabel = "FILE",
            description = "Shares of storeys, claddings, windows and the like; else the bundled mix.csv.")
    private Path mix;

    @Option(names = "--climate", description = "Write the weather of the invented town too, as climate.csv.")
    private boolean climate;

    @Option(
            names = "--jobs",
            paramLabel = "N",
            description =
                    "Write N job records of a made-up shop too, as jobs.csv, with its rates in true-rates.csv, to try"
                            + " calibrate on.")
    private int jobs;

    @Mixin
    private OutputOptions output;

    @Override
    public Integer call() throws Exception {
        if (houses < 1 || houses > MOST) {
            throw new ParameterException(spec.commandLine(), "--houses (" + houses + ") must be from 1 to " + MOST);
        }
        if (jobs < 0 || jobs > MOST_JOBS) {
            throw new ParameterException(spec.commandLine(), "--jobs (" + jobs + ") must be from 0 to " + MOST_JOBS);
        }
        new Generate(houses, seed, Optional.ofNullable(mix), climate, jobs, output.request()).run(common.messages());
        return 0;
    }
}
