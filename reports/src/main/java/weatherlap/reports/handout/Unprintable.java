package weatherlap.reports.handout;

import java.awt.Font;
import java.util.stream.Stream;
import weatherlap.charts.Fonts;
import weatherlap.sim.house.House;

/** What the font of the printed sheet lacks: it has Latin, Greek, Cyrillic, Armenian, Georgian, Hebrew and Arabic letters. */
final class Unprintable {
    private Unprintable() {}

    /** Empty where everything can be printed. */
    static String note(House house) {
        Font font = new Font(Fonts.FAMILY, Font.PLAIN, 12);
        boolean lacking = Stream.concat(
                        Stream.of(house.label()),
                        house.elevations().stream()
                                .flatMap(wall -> Stream.concat(
                                        Stream.of(wall.id()),
                                        wall.openings().stream().map(opening -> opening.id()))))
                .flatMapToInt(String::codePoints)
                .anyMatch(c -> !Character.isWhitespace(c) && !font.canDisplay(c));
        return lacking
                ? "The printing font lacks some letters of the names here; they are printed as a question mark. The page"
                        + " handout.html holds them whole."
                : "";
    }
}
