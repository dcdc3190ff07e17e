package weatherlap.reports.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import weatherlap.reports.jobs.InputPaths;

/** What is read beside a portfolio. */
final class InputOptions {
    @Option(
            names = "--assumptions",
            paramLabel = "DIR",
            description = "Folder of assumption tables, as written by `weatherlap assumptions`; else the bundled ones.")
    private Path assumptions;

    @Option(names = "--climate", paramLabel = "FILE", description = "Hourly weather; else that of an invented town.")
    private Path climate;

    @Mixin
    private SetOptions set;

    /** @param portfolio null for the bundled demo */
    InputPaths paths(Path portfolio) {
        return new InputPaths(
                Optional.ofNullable(portfolio),
                Optional.ofNullable(assumptions),
                Optional.ofNullable(climate),
                set.changes());
    }
}
