package weatherlap.charts.kit;

import java.awt.Graphics2D;

/**
 * A picture as a record of data: what it says in words, how large it is, and a last step that draws it.
 *
 * <p>The same data give the same bytes: nothing in the drawing depends on the locale, the time, the machine's fonts or
 * what was drawn before.
 */
public interface Picture {

    /** Lower-case words joined by hyphens: the stem of a file name, the same for all pictures of one kind. */
    String name();

    /** The heading, drawn at the top. */
    String title();

    /** What the picture shows, in whole sentences with the numbers that matter: the text for those who cannot see it. */
    String message();

    /** Width in CSS pixels (1/96 in.). */
    default int widthPx() {
        return Theme.WIDTH_PX;
    }

    /** Height in CSS pixels (1/96 in.). */
    int heightPx();

    /** Draws the picture into (0, 0) to ({@link #widthPx}, {@link #heightPx}). */
    void draw(Graphics2D graphics);

    /** The picture as a self-contained SVG element, ready to stand in a page or, after an XML declaration, in a file. */
    default String svg() {
        return SvgCanvas.write(this);
    }
}
