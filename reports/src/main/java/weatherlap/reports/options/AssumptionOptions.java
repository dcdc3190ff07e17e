package weatherlap.reports.options;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What is assumed of the shop. */
public final class AssumptionOptions {
    @Option(
            names = "--assumptions",
            paramLabel = "DIR",
            description =
                    "Folder of assumption tables, or one workbook of them, as `weatherlap assumptions` writes both (default:"
                            + " those that come with the program).")
    private Path folder;

    @Option(
            names = "--as-of",
            paramLabel = "YEAR",
            description =
                    "Carry prices and wages to this year, by price-index.csv (default: they stay as the tables have them). Same as --set"
                            + " as_of=YEAR.")
    private String asOf;

    @Mixin
    private SetOptions set;

    public Optional<Path> folder() {
        return Optional.ofNullable(folder);
    }

    public List<String> changes() {
        return Stream.concat(Stream.ofNullable(asOf).map(year -> "as_of=" + year), set.changes().stream())
                .toList();
    }
}
