package weatherlap.charts.kit;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/**
 * Writes and rules in the theme, for pictures that are drawn by hand. A label's x is where its share {@code align} of its
 * width ends: 0 starts there, 0.5 is centred, 1 ends there; y is the baseline; both px.
 */
public record Pen(Graphics2D graphics) {

    /** The heading at the top left, cut to a width. */
    public void title(String text, double widthPx) {
        Lettering.draw(
                graphics, Lettering.fit(text, Theme.TITLE, widthPx), Theme.TITLE, Tone.INK, 0, Theme.TITLE_PX + 1.0, 0);
    }

    public void small(String text, Tone tone, double x, double y, double align) {
        Lettering.draw(graphics, Lettering.clean(text), Theme.SMALL, tone, x, y, align);
    }

    /** A label no higher than so many px, bold; left out where it is wider than so many. */
    public void fitted(String text, Tone tone, double x, double y, double heightPx, double widthPx) {
        Font font = Theme.SMALL_STRONG.deriveFont((float) Math.min(Theme.SMALL_PX, Math.floor(heightPx)));
        if (Lettering.width(Lettering.clean(text), font) <= widthPx) {
            Lettering.draw(graphics, Lettering.clean(text), font, tone, x, y + font.getSize() * 0.36, 0.5);
        }
    }

    /** Sets tone and width of lines. */
    public void line(Tone tone, float widthPx) {
        graphics.setPaint(tone.color());
        graphics.setStroke(new BasicStroke(widthPx, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
    }

    /** Oblique lines over a box. */
    public void hatch(Rectangle2D box, Tone tone) {
        line(tone, 0.75f);
        Hatch.lines(graphics, box);
    }

    /** Text without what a line cannot hold. */
    public static String clean(String text) {
        return Lettering.clean(text);
    }

    /** Text, cut with an ellipsis to a width in the type of {@link Theme#TEXT}. */
    public static String fit(String text, double widthPx) {
        return Lettering.fit(text, Theme.TEXT, widthPx);
    }
}
