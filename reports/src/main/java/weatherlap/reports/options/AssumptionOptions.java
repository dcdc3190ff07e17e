package weatherlap.reports.options;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What is assumed of the shop. */
public final class AssumptionOptions {
    @Option(
            names = "--assumptions",
            paramLabel = "DIR",
            description =
                    "Folder of assumption tables, as `weatherlap assumptions` writes them (default: the bundled ones).")
    private Path folder;

    @Mixin
    private SetOptions set;

    public Optional<Path> folder() {
        return Optional.ofNullable(folder);
    }

    public List<String> changes() {
        return set.changes();
    }
}
