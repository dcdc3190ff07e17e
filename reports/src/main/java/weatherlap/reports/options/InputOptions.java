package weatherlap.reports.options;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weatherlap.reports.jobs.InputPaths;

/** What a run reads: a portfolio, what is assumed of the shop, the weather. */
public final class InputOptions {
    @Parameters(
            paramLabel = "PORTFOLIO",
            arity = "0..1",
            description = "Folder with houses.csv, elevations.csv, openings.csv; else the bundled demo.")
    private Path portfolio;

    @Mixin
    private AssumptionOptions assumptions;

    @Option(
            names = "--site",
            paramLabel = "FILE",
            description =
                    "Site file of the houses, or its folder, as weatherlap site writes it: their place, weather and design wind; else the"
                            + " site.toml beside the portfolio, where there is one.")
    private Path site;

    @Option(
            names = "--climate",
            paramLabel = "FILE",
            description =
                    "Hourly weather to try instead of that of the site (own CSV, EPW, ISD-Lite or global-hourly CSV); named more than once,"
                            + " the files are read as one record. Or a year that comes with the program: newark, kennedy,"
                            + " laguardia, seattle. Without it and without a site: that of an invented town.")
    private List<Path> climate = List.of();

    public InputPaths paths() {
        return new InputPaths(
                Optional.ofNullable(portfolio),
                assumptions.folder(),
                climate,
                Optional.ofNullable(site),
                assumptions.changes());
    }
}
