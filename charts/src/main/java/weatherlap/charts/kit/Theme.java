package weatherlap.charts.kit;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Stroke;

/** Sizes, spacing, type and strokes that all pictures share. */
public final class Theme {

    /** Width of a chart in a report, CSS px. */
    public static final int WIDTH_PX = 720;

    /** Fonts for a page or a sheet, most wanted first, as in CSS {@code font-family}. */
    public static final String FONT_STACK = "'" + Fonts.FAMILY + "', Verdana, sans-serif";

    /** Type scale, CSS px. */
    public static final int TITLE_PX = 15;

    public static final int TEXT_PX = 12;
    public static final int SMALL_PX = 11;

    /** The unit of spacing, CSS px. */
    public static final int SPACE_PX = 8;

    static {
        Fonts.install();
    }

    public static final Font TITLE = new Font(Fonts.FAMILY, Font.BOLD, TITLE_PX);
    public static final Font TEXT = new Font(Fonts.FAMILY, Font.PLAIN, TEXT_PX);
    public static final Font STRONG = new Font(Fonts.FAMILY, Font.BOLD, TEXT_PX);
    public static final Font SMALL = new Font(Fonts.FAMILY, Font.PLAIN, SMALL_PX);
    public static final Font SMALL_STRONG = new Font(Fonts.FAMILY, Font.BOLD, SMALL_PX);

    public static final Stroke HAIRLINE = stroke(0.75f);
    public static final Stroke THIN = stroke(1f);

    private Theme() {}

    public static Stroke stroke(float width) {
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }

    /** A dashed stroke: px drawn, px left out. */
    public static Stroke stroke(float width, float dash, float gap) {
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10f, new float[] {dash, gap}, 0f);
    }

    /** A colour between two others: 0 gives the first, 1 the second. */
    public static Color mix(Color first, Color second, double share) {
        return new Color(
                between(first.getRed(), second.getRed(), share),
                between(first.getGreen(), second.getGreen(), share),
                between(first.getBlue(), second.getBlue(), share));
    }

    private static int between(int first, int second, double share) {
        return (int) Math.round(first + (second - first) * share);
    }
}
