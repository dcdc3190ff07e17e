package weatherlap.datasets.site;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import weatherlap.datasets.climate.Location;
import weatherlap.datasets.table.Column;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Schema;

/**
 * The weather stations of the United States that come with the program: those that reported in 2023 and did so before 2013, cut from NOAA's
 * station history (public domain).
 */
public final class Stations {
    private static final Schema SCHEMA = new Schema(
            "us-weather-stations.csv",
            "weather stations of the United States",
            List.of(
                    Column.key("station", "USAF and WBAN number joined"),
                    Column.text("icao", "code of the airport").optional(),
                    Column.text("name", "as NOAA has it"),
                    Column.text("state", "two letters"),
                    Column.number("latitude", "degrees", -90, 90, "north"),
                    Column.number("longitude", "degrees", -180, 180, "east"),
                    Column.anyNumber("elevation_m", "m", "over the sea").optional(),
                    Column.whole("first_year", 1800, 9999, "of its reports")),
            List.of("station"));

    private static final Stations BUNDLED = read();

    private final List<Station> all;

    private Stations(List<Station> all) {
        this.all = List.copyOf(all);
    }

    public static Stations bundled() {
        return BUNDLED;
    }

    private static Stations read() {
        Problems problems = new Problems();
        List<Station> read = Folder.beside(Stations.class).table(SCHEMA, problems).stream()
                .flatMap(table -> table.soundRows().map(Stations::station))
                .toList();
        if (problems.hasErrors()) {
            throw new IllegalStateException(problems.errors().toString());
        }
        return new Stations(read);
    }

    private static Station station(Row row) {
        return new Station(
                row.text("station"),
                row.text("name"),
                row.text("state"),
                new Location(row.number("latitude"), row.number("longitude")));
    }

    public List<Station> all() {
        return all;
    }

    public Optional<Station> of(String id) {
        return all.stream().filter(station -> station.id().equals(id)).findFirst();
    }

    /** So many stations, the nearest first. */
    public List<Station> nearest(Location place, int count) {
        return all.stream()
                .sorted(Comparator.comparingDouble(station -> station.location().milesTo(place)))
                .limit(count)
                .toList();
    }

    /** Stations whose name holds words that begin with each of these, in lower case, in the state, where one is given. */
    List<Station> named(List<String> words, Optional<String> state) {
        return all.stream()
                .filter(station -> state.isEmpty() || station.state().equals(state.get()))
                .filter(station ->
                        words.stream().allMatch(word -> station.words().stream().anyMatch(own -> own.startsWith(word))))
                .toList();
    }

    boolean hasState(String letters) {
        return all.stream().anyMatch(station -> station.state().equals(letters));
    }
}
