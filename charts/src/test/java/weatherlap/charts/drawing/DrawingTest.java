package weatherlap.charts.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
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

    @Test
    void aBareWallHasNothingToTakeDown() {
        assertThat(new WallDrawing("w", 240, 96, List.of(), List.of()).message())
                .contains("no siding panels to take down");
    }
}
