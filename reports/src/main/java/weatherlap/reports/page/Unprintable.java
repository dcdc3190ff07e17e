package weatherlap.reports.page;

import java.awt.Font;
import java.util.stream.Stream;
import weatherlap.charts.kit.Fonts;
import weatherlap.sim.house.House;

/** What the font of printed sheets lacks: it has Latin, Greek, Cyrillic, Armenian, Georgian, Hebrew and Arabic letters. */
public final class Unprintable {
    private Unprintable() {}

    /**
     * A sentence about the names of the houses and their parts; empty where everything can be printed.
     *
     * @param page that holds the names whole
     */
    public static String note(Stream<House> houses, String page) {
        Fonts.install();
        Font font = new Font(Fonts.FAMILY, Font.PLAIN, 12);
        boolean lacking = houses.flatMap(Unprintable::names)
                .flatMapToInt(String::codePoints)
                .anyMatch(c -> !Character.isWhitespace(c) && !font.canDisplay(c));
        return lacking
                ? "The printing font lacks some letters of the names here and prints a question mark. The page " + page
                        + " shows them all."
                : "";
    }

    private static Stream<String> names(House house) {
        return Stream.concat(
                Stream.of(house.id(), house.label()),
                house.elevations().stream()
                        .flatMap(wall -> Stream.concat(
                                Stream.of(wall.id()), wall.openings().stream().map(opening -> opening.id()))));
    }
}
