package weatherlap.charts;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.SvgDrawing;

class SvgDrawingTest {
    private static final int SCALE = 2;
    private static final int SQUARE = 8;

    static List<Picture> usual() {
        return PictureTest.usual();
    }

    /**
     * Read back from its SVG, a picture holds the ink of the picture drawn by itself, but for the edges of letters. Where a chart cuts off what
     * the SVG, which cuts nothing off, shows (its labels beside the axes), there is more of it.
     */
    @ParameterizedTest
    @MethodSource("usual")
    void drawsWhatThePictureDraws(Picture picture) {
        SvgDrawing read = SvgDrawing.of(Svg.parse(picture.svg()).root()).orElseThrow();

        assertThat(read.widthPx()).isEqualTo(picture.widthPx());
        assertThat(read.heightPx()).isEqualTo(picture.heightPx());
        double[] drawn = ink(picture, picture::draw);
        double[] again = ink(picture, read::draw);
        double all = Arrays.stream(drawn).sum();
        double missing = sum(drawn, again);
        double more = sum(again, drawn);
        assertThat(missing).isLessThan(0.1 * all);
        assertThat(more).isLessThan(DrawingSamples.all().contains(picture) ? 0.1 * all : all);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<rect width='1' height='1' transform='scale(2)'/>",
                "<rect width='1' height='1' transform='translate(2)'/>",
                "<rect width='1' height='1' fill='#123456'/>",
                "<rect width='1' height='1' fill='rgb(1,2)'/>",
                "<rect width='1' height='1' fill-opacity='0.5'/>",
                "<rect width='1' height='1' rx='1'/>",
                "<rect width='1em' height='1'/>",
                "<g class='a'><rect width='1' height='1'/></g>",
                "<path d='m 1 1 l 2 2'/>",
                "<path d='M 1'/>",
                "<line x2='1' stroke='black' stroke-dasharray='5%'/>",
                "<text font-size='12'>a</text>",
                "<text stroke='black'>a</text>",
                "<text>\u0627\u0628</text>",
                "<text>\u7A93</text>",
                "<image width='1' height='1'/>"
            })
    void leavesWhatOurPicturesDoNotHold(String piece) {
        assertThat(SvgDrawing.of(Svg.parse(around(piece)).root())).isEmpty();
    }

    @Test
    void readsWhatOurPicturesHold() {
        assertThat(SvgDrawing.of(Svg.parse(around("<g fill='none'><text x='1' y='9'>a</text></g>"))
                        .root()))
                .isPresent();
    }

    private static String around(String piece) {
        return "<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9' viewBox='0 0 9 9'>" + piece + "</svg>";
    }

    /** How much darker than paper small squares are, square by square, each of red, green and blue. */
    private static double[] ink(Picture picture, Consumer<Graphics2D> drawing) {
        BufferedImage image = image(picture, drawing);
        double[] ink = new double[3 * (image.getWidth() / SQUARE) * (image.getHeight() / SQUARE)];
        int at = 0;
        for (int x = 0; x + SQUARE <= image.getWidth(); x += SQUARE) {
            for (int y = 0; y + SQUARE <= image.getHeight(); y += SQUARE) {
                int[] dots = image.getRGB(x, y, SQUARE, SQUARE, null, 0, SQUARE);
                for (int shift = 0; shift <= 16; shift += 8) {
                    int bits = shift;
                    ink[at++] = Arrays.stream(dots)
                            .map(rgb -> 255 - (rgb >> bits & 255))
                            .average()
                            .orElseThrow();
                }
            }
        }
        return ink;
    }

    private static double sum(double[] more, double[] less) {
        return IntStream.range(0, more.length)
                .mapToDouble(i -> Math.max(0, more[i] - less[i]))
                .sum();
    }

    private static BufferedImage image(Picture picture, Consumer<Graphics2D> drawing) {
        BufferedImage image =
                new BufferedImage(SCALE * picture.widthPx(), SCALE * picture.heightPx(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.scale(SCALE, SCALE);
        g.setColor(Color.BLACK);
        drawing.accept(g);
        g.dispose();
        return image;
    }
}
