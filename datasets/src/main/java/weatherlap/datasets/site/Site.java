package weatherlap.datasets.site;

import java.util.List;
import java.util.Optional;
import weatherlap.datasets.climate.Location;
import weatherlap.sim.Check;
import weatherlap.sim.wind.DesignWind;

/**
 * Where houses stand, what weather is theirs and what wind they must stand.
 *
 * @param place name for people; text
 * @param location where known; else that of the station, where one is named
 * @param station nearest to the houses
 * @param weather files, from the folder of the site file, and words of bundled records; empty: no weather is theirs
 * @param wind empty: not known, and nothing is said of it
 */
public record Site(
        String place,
        Optional<Location> location,
        Optional<Station> station,
        List<String> weather,
        Optional<DesignWind> wind) {
    public Site {
        Check.text("place", place);
        weather = List.copyOf(weather);
        location = location.or(() -> station.map(Station::location));
    }
}
