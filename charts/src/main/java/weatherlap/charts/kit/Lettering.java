package weatherlap.charts.kit;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Text in pictures: cleaned of what XML or a line cannot hold, measured, shortened, broken into lines. */
public final class Lettering {

    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);
    private static final double AXIS_PX = 560;
    public static final String CUT = "\u2026";

    private Lettering() {}

    /** The text without control characters, line breaks, direction overrides and halves of characters. */
    public static String clean(String text) {
        StringBuilder kept = new StringBuilder(text.length());
        text.codePoints()
                .map(c -> Character.isWhitespace(c) ? ' ' : c)
                .filter(Lettering::isDrawn)
                .forEach(kept::appendCodePoint);
        return kept.toString().strip();
    }

    private static boolean isDrawn(int c) {
        boolean control = Character.isISOControl(c) || c == 0xFFFE || c == 0xFFFF;
        boolean half = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
        boolean direction = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
        return !control && !half && !direction;
    }

    /** Width in px. */
    public static double width(String text, Font font) {
        return font.getStringBounds(text, CONTEXT).getWidth();
    }

    /** The text, cleaned, or as much of its beginning as fits, with an ellipsis. */
    public static String fit(String text, Font font, double widthPx) {
        String whole = clean(text);
        if (width(whole, font) <= widthPx) {
            return whole;
        }
        int end = whole.length();
        while (end > 0 && width(whole.substring(0, end).stripTrailing() + CUT, font) > widthPx) {
            end = whole.offsetByCodePoints(end, -1);
        }
        return whole.substring(0, end).stripTrailing() + CUT;
    }

    /** What is measured and, always whole, what follows it (its unit), in the small type of axes. */
    public static String axis(String what, String rest) {
        return fit(what, Theme.SMALL, AXIS_PX - width(rest, Theme.SMALL)) + rest;
    }

    /** The text broken at blanks into at most so many lines; the last one is cut where there is more. */
    public static List<String> wrap(String text, Font font, double widthPx, int lines) {
        List<String> broken = new ArrayList<>();
        String rest = clean(text);
        while (!rest.isEmpty() && broken.size() < lines - 1 && width(rest, font) > widthPx) {
            int end = lastBlank(rest, font, widthPx);
            if (end <= 0) {
                break;
            }
            broken.add(rest.substring(0, end).strip());
            rest = rest.substring(end).strip();
        }
        broken.add(fit(rest, font, widthPx));
        return broken;
    }

    /** The end of the longest run of whole words that fits; 0 where the first word does not. */
    private static int lastBlank(String text, Font font, double widthPx) {
        int found = 0;
        for (int i = text.indexOf(' '); i > 0; i = text.indexOf(' ', i + 1)) {
            if (width(text.substring(0, i), font) > widthPx) {
                break;
            }
            found = i;
        }
        return found;
    }

    /** The box that text takes when its baseline starts at (x, y). */
    public static Rectangle2D box(String text, Font font, double x, double y) {
        return new Rectangle2D.Double(x, y - font.getSize() * 0.8, width(text, font), font.getSize() * 1.05);
    }

    /** Draws a line of text; {@code align} is the share of its width that lies left of x: 0 starts there, 1 ends there. */
    public static void draw(Graphics2D g, String text, Font font, Tone tone, double x, double y, double align) {
        g.setFont(font);
        g.setPaint(tone.color());
        g.drawString(text, (float) (x - width(text, font) * align), (float) y);
    }
}
