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
            description = "Site file, or its folder, as `weatherlap site` writes it: place, weather and design wind"
                    + " (default: the site.toml next to the houses, if there is one).")
    private Path site;

    @Option(
            names = "--climate",
            paramLabel = "FILE",
            description =
                    "Hourly weather to try in place of the site's: a CSV of your own, EPW, ISD-Lite or global-hourly"
                            + " CSV. Give it more than once to join files into one record. Or name a year that comes with the program: newark,"
                            + " kennedy, laguardia, seattle. With no site and no --climate, the weather of an invented town stands in.")
    private List<Path> climate = List.of();

    /** Files, or words of bundled records; empty: that of the site. */
    public List<Path> climate() {
        return climate;
    }

    public Optional<Path> site() {
        return Optional.ofNullable(site);
    }
}
