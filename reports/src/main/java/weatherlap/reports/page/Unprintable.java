package weatherlap.reports.page;

import java.util.stream.Stream;
import weatherlap.reports.format.Printable;
import weatherlap.sim.house.House;

/** What is said of names that a printed sheet spells otherwise. */
public final class Unprintable {
    private Unprintable() {}

    /**
     * A sentence about names; empty where all can be printed as they are.
     *
     * @param page that holds the names as written
     */
    public static String note(Stream<String> names, String page) {
        return names.allMatch(Printable::isPrintable)
                ? ""
                : "Names in other letters are spelt in Latin letters here; the page " + page
                        + " holds them as written.";
    }

    /** Those of a house and its parts. */
    public static Stream<String> names(House house) {
        return Stream.concat(
                Stream.of(house.id(), house.label()),
                house.elevations().stream()
                        .flatMap(wall -> Stream.concat(
                                Stream.of(wall.id()), wall.openings().stream().map(opening -> opening.id()))));
    }
}
