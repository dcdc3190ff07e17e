package weatherlap.reports.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weatherlap.reports.jobs.InputPaths;

/** What a run reads: a portfolio, what is assumed of the shop, the weather. */
final class InputOptions {
    @Parameters(
            paramLabel = "PORTFOLIO",
            arity = "0..1",
            description = "Folder with houses.csv, elevations.csv, openings.csv; else the bundled demo.")
    private Path portfolio;

    @Mixin
    private AssumptionOptions assumptions;

    @Option(
            names = "--climate",
            paramLabel = "FILE",
            description =
                    "Hourly weather of one place (own CSV, EPW, ISD-Lite or global-hourly CSV); else that of an invented town.")
    private Path climate;

    InputPaths paths() {
        return new InputPaths(
                Optional.ofNullable(portfolio),
                assumptions.folder(),
                Optional.ofNullable(climate),
                assumptions.changes());
    }
}
