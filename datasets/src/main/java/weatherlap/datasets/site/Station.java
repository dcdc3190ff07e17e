package weatherlap.datasets.site;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import weatherlap.datasets.climate.Location;

/**
 * A weather station.
 *
 * @param id its USAF and WBAN numbers joined, 11 signs, as NOAA's hourly files are named
 * @param state two letters
 */
public record Station(String id, String name, String state, Location location) {
    private static final String HOURLY_FILES = "https://www.ncei.noaa.gov/data/global-hourly/access/";

    /** Where NOAA keeps its hourly file of a year. */
    public String address(int year) {
        return HOURLY_FILES + year + "/" + id + ".csv";
    }

    /** The name under which a site file asks for the hourly file of a year, from the folder of the site file. */
    public String fileName(int year) {
        return "weather/" + id + "-" + year + ".csv";
    }

    /** Name and state, as people read them. */
    public String title() {
        return name + ", " + state;
    }

    /** The words of its name, in lower case. */
    List<String> words() {
        return Arrays.asList(name.toLowerCase(Locale.ROOT).split("[^a-z0-9]+"));
    }
}
