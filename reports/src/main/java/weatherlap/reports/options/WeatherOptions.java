package weatherlap.reports.options;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The site of the houses and the weather to try. */
public final class WeatherOptions {
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

    /** Files, or words of bundled records; empty: that of the site. */
    public List<Path> climate() {
        return climate;
    }

    public Optional<Path> site() {
        return Optional.ofNullable(site);
    }
}
