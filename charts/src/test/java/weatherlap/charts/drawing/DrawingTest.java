package weatherlap.charts.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.words.Inches;

class DrawingTest {

    @Test
    void inchesAreReadOffATape() {
        assertThat(Inches.text(35.5)).isEqualTo("35 1/2\u2033");
        assertThat(Inches.text(54)).isEqualTo("54\u2033");
        assertThat(Inches.text(0.375)).isEqualTo("3/8\u2033");
        assertThat(Inches.text(31.9999)).isEqualTo("32\u2033");
        assertThat(Inches.text(10 + 3 / 16.0 + 0.01)).isEqualTo("10 3/16\u2033");
        assertThat(Inches.text(-0.25)).isEqualTo("\u22121/4\u2033");
        assertThat(Inches.feet(102)).isEqualTo("8\u2032 6\u2033");
        assertThat(Inches.feet(119.8)).isEqualTo("10\u2032");
    }

    @Test
    void wallMarksOnlyThePanelsThatComeDown() {
        WallDrawing wall = new WallDrawing(
                "North wall",
                240,
                96,
                List.of(
                        new WallDrawing.Panel("A1", 0, 0, 144, 8, false),
                        new WallDrawing.Panel("B1", 0, 8, 144, 8, true)),
                List.of(new WallDrawing.Opening("1", 150, 20, 36, 48)));

        assertThat(wall.message())
                .isEqualTo(
                        "North wall: a wall 20\u2032 wide and 8\u2032 high to the eave with 1 opening; 1 of 2 siding panels "
                                + "comes down.");
        assertThat(wall.svg()).contains(">B1<", ">1<", ">eave<", ">grade<").doesNotContain(">A1<");
    }

    /** A foot wide on a wall of four stories: too small to hold its number, which stands over it. */
    @Test
    void everyWindowHasItsNumberHoweverSmallItIsDrawn() {
        WallDrawing wall = new WallDrawing(
                "w",
                "panel",
                480,
                480,
                List.of(),
                List.of(
                        new WallDrawing.Opening("27", 100, 400, 12, 24),
                        new WallDrawing.Opening("28", 200, 20, 36, 60),
                        new WallDrawing.Opening("29", 300, 20, 48, 8)),
                200);

        assertThat(wall.svg()).contains(">27<", ">28<", ">29<");
    }

    @Test
    void markOfAPanelKeepsClearOfTheOpeningBeforeIt() {
        WallDrawing.Panel panel = new WallDrawing.Panel("B1", 0, 8, 144, 8, true);
        WallDrawing wall =
                new WallDrawing("w", 240, 96, List.of(panel), List.of(new WallDrawing.Opening("1", 0, 0, 60, 48)));
        String before = wall.svg().substring(0, wall.svg().indexOf(">B1<"));
        String tag = before.substring(before.lastIndexOf("<text"));
        double x = Double.parseDouble(tag.replaceAll("(?s).* x=\"([0-9.]+)\".*", "$1"));

        assertThat(x).isGreaterThan(64 + 60 * wall.pxPerIn());
    }

    /** Courses of 4 in. on a wall of two stories, drawn small: letters beside the wall, numbers at most in the panels, none on another. */
    @Test
    void marksOfLowCoursesDoNotOverlap() {
        List<WallDrawing.Panel> panels = IntStream.range(0, 40)
                .mapToObj(c -> new WallDrawing.Panel(
                        (c < 26 ? "" : "A") + (char) ('A' + c % 26) + "1", 0, 4.0 * c, 144, 4, true))
                .toList();
        for (int tallestPx : new int[] {260, 320, 420, 560, 900}) {
            List<Rectangle2D> capitals =
                    capitals(new WallDrawing("w", "panel", 396, 228, panels, List.of(), tallestPx).svg());
            assertThat(capitals).hasSizeGreaterThanOrEqualTo(40);
            for (int i = 0; i < capitals.size(); i++) {
                for (int j = 0; j < i; j++) {
                    assertThat(capitals.get(i).intersects(capitals.get(j)))
                            .as("marks %d and %d at %d px", i, j, tallestPx)
                            .isFalse();
                }
            }
        }
    }

    /** Where the capitals of each mark stand: 0.73 of the type's size over the baseline, at least half of it wide a letter. */
    private static List<Rectangle2D> capitals(String svg) {
        Matcher texts = Pattern.compile("<text([^>]*)>([A-Z]*[0-9]*)</text").matcher(svg);
        return texts.results()
                .map(text -> {
                    double size = number(text.group(1), "font-size");
                    return (Rectangle2D) new Rectangle2D.Double(
                            number(text.group(1), " x"),
                            number(text.group(1), " y") - 0.73 * size,
                            0.5 * size * text.group(2).length(),
                            0.73 * size);
                })
                .toList();
    }

    /** A text that names no size has that of the picture, 12 px or less. */
    private static double number(String attributes, String name) {
        Matcher found = Pattern.compile(name + "=\"([0-9.]+)").matcher(attributes);
        return found.find() ? Double.parseDouble(found.group(1)) : 12;
    }

    @Test
    void aBareWallHasNothingToTakeDown() {
        assertThat(new WallDrawing("w", 240, 96, List.of(), List.of()).message())
                .contains("no siding panels to take down");
        WallDrawing boards = new WallDrawing(
                "w", "board", 240, 96, List.of(new WallDrawing.Panel("A1", 0, 0, 120, 8, true)), List.of(), 568);
        assertThat(boards.message()).contains("1 of 1 siding boards comes down");
        assertThat(boards.svg()).contains(">board to take down and put back<").doesNotContain("panel");
    }
}
