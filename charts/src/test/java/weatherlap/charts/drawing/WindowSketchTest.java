package weatherlap.charts.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class WindowSketchTest {
    private static final WindowSketch.View VIEW = new WindowSketch.View(
            List.of(
                    new WallPiece(WallPiece.Kind.GLASS, 4, 5, 20, 40),
                    new WallPiece(WallPiece.Kind.FRAME, 2, 3, 24, 44),
                    new WallPiece(WallPiece.Kind.OLD_FRAME, 0, 0, 28, 50)),
            5.56);

    @Test
    void saysWhatItShows() {
        assertThat(new WindowSketch("Window A, insert", VIEW, 1).message())
                .isEqualTo("Window A, insert, seen from outside, to scale: 5.6 square feet of glass.");
        assertThat(new WindowSketch("Window A, insert", new WindowSketch.View(List.of(), 0), 1).message())
                .isEqualTo("Window A, insert: it does not fit.");
    }

    /** 28 × 50 in. in a frame of 56 × 50 px: the height decides, 1 px an inch. */
    @Test
    void theScaleIsTheLargestThatFits() {
        assertThat(WindowSketch.scale(VIEW, 56, 50)).isCloseTo(1, Offset.offset(1e-12));
        assertThat(WindowSketch.scale(VIEW, 14, 50)).isCloseTo(0.5, Offset.offset(1e-12));
        assertThatThrownBy(() -> new WindowSketch("w", VIEW, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Glass 4 in. from the left and 5 from the bottom of a unit 50 in. high stands 5 in. below its top. */
    @Test
    void piecesStandWhereTheyAreMeasuredTheOldFrameBelowTheNewUnit() {
        double scale = 3;
        String svg = new WindowSketch("w", VIEW, scale).svg();
        List<MatchResult> boxes =
                Pattern.compile("<rect[^>]*>").matcher(svg).results().toList();
        String glass = boxes.stream()
                .map(MatchResult::group)
                .filter(box -> number(box, "width") == 20 * scale && number(box, "height") == 40 * scale)
                .findFirst()
                .orElseThrow();
        assertThat(number(glass, "x")).isCloseTo(1 + 4 * scale, Offset.offset(0.01));
        assertThat(number(glass, "y")).isCloseTo(1 + 5 * scale, Offset.offset(0.01));
        assertThat(number(boxes.get(0).group(), "height")).isEqualTo(50 * scale);
        assertThat(svg)
                .contains("width=\"" + (int) (28 * scale + 2) + "\"", "height=\"" + (int) (50 * scale + 2) + "\"");
    }

    private static double number(String tag, String attribute) {
        var found = Pattern.compile(" " + attribute + "=\"([0-9.]+)\"").matcher(tag);
        assertThat(found.find()).as(tag).isTrue();
        return Double.parseDouble(found.group(1));
    }
}
