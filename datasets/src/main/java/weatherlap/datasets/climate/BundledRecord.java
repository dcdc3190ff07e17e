package weatherlap.datasets.climate;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import weatherlap.datasets.table.Source;

/**
 * A year of hourly weather that comes with the program. Measured, not made: temperature, wind and rain as the open data have them,
 * brought to the units of {@link ClimateCsv} and to local standard time; nothing else was changed, so what is wrong in them is told with
 * every use. One year each: no statistic of spells.
 */
public enum BundledRecord {
    NEWARK("Newark airport, New Jersey", 2013, "nycflights13, file data-raw/weather.csv", 40.683, -74.169),
    KENNEDY("Kennedy airport, New York", 2013, "nycflights13, file data-raw/weather.csv", 40.639, -73.764),
    LAGUARDIA("LaGuardia airport, New York", 2013, "nycflights13, file data-raw/weather.csv", 40.779, -73.880),
    SEATTLE("Seattle-Tacoma airport, Washington", 2014, "pnwflights14, file data/weather.csv", 47.445, -122.314);

    private final String place;
    private final int year;
    private final String origin;
    private final Location location;

    BundledRecord(String place, int year, String origin, double latitudeDeg, double longitudeDeg) {
        this.place = place;
        this.year = year;
        this.origin = origin;
        this.location = new Location(latitudeDeg, longitudeDeg);
    }

    /** The word that commands and site files use for it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(BundledRecord::word).toList();
    }

    /** The record that is called by one bare word; a file of that name needs a path, as in {@code ./newark}. */
    public static Optional<BundledRecord> of(String word) {
        return Arrays.stream(values())
                .filter(record -> record.word().equals(word))
                .findFirst();
    }

    public static Optional<BundledRecord> of(Path path) {
        return of(path.toString());
    }

    /** Place and year, as sheets name the weather. */
    public String title() {
        return place + ", " + year;
    }

    /** Where it was taken from and under which licence. */
    public String credit() {
        return title() + ": R data package " + origin + ", CC0";
    }

    public Location location() {
        return location;
    }

    /** Its table, packed with gzip. */
    public Source source() {
        String file = word() + ".csv.gz";
        return new Source(word(), () -> BundledRecord.class.getResourceAsStream(file));
    }
}
