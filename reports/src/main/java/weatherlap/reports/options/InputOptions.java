package weatherlap.reports.options;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weatherlap.reports.inputs.InputPaths;

/** What a run reads: a portfolio, what is assumed of the shop, the weather. */
public final class InputOptions {
    @Parameters(
            paramLabel = "PORTFOLIO",
            arity = "0..1",
            description = "Folder with houses.csv, elevations.csv and openings.csv, or a workbook (default: the"
                    + " bundled demo).")
    private Path portfolio;

    @Mixin
    private AssumptionOptions assumptions;

    @Mixin
    private WeatherOptions weather;

    @Option(
            names = "--called",
            paramLabel = "NAME",
            description = "What the results call the houses (default: the name of their folder).")
    private String called;

    public InputPaths paths() {
        return new InputPaths(
                        Optional.ofNullable(portfolio),
                        assumptions.folder(),
                        weather.climate(),
                        weather.site(),
                        assumptions.changes())
                .called(Optional.ofNullable(called));
    }
}
