package weatherlap.charts.kit;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.plot.Plot;

/** What stands around a plot: the title and a line under it that says what is counted. */
public final class Frame {

    private static final int TITLE_BASELINE_PX = 16;
    private static final int SCOPE_BASELINE_PX = 34;

    /** Height of the title and the scope, px. */
    public static final int HEAD_PX = 48;

    /** Height of a picture with nothing to show, px. */
    public static final int EMPTY_PX = HEAD_PX + 80;

    private Frame() {}

    public static void head(Graphics2D g, Picture picture, String scope) {
        Lettering.draw(
                g,
                Lettering.fit(picture.title(), Theme.TITLE, picture.widthPx()),
                Theme.TITLE,
                Tone.INK,
                0,
                TITLE_BASELINE_PX,
                0);
        Lettering.draw(
                g,
                Lettering.fit(scope, Theme.TEXT, picture.widthPx()),
                Theme.TEXT,
                Tone.MUTED,
                0,
                SCOPE_BASELINE_PX,
                0);
    }

    /** Draws the plot under the head, over the whole width. */
    public static void body(Graphics2D g, Picture picture, Plot plot) {
        body(g, picture, 0, plot);
    }

    /** The same, leaving room between the head and the plot. */
    public static void body(Graphics2D g, Picture picture, int roomPx, Plot plot) {
        int top = HEAD_PX + roomPx;
        plot.draw(g, new Rectangle2D.Double(0, top, picture.widthPx(), picture.heightPx() - top), null, null, null);
    }

    /** The same with nothing to show: a sentence in place of the plot. */
    public static void empty(Graphics2D g, Picture picture) {
        List<String> lines = Lettering.wrap(picture.message(), Theme.TEXT, picture.widthPx(), 3);
        for (int i = 0; i < lines.size(); i++) {
            Lettering.draw(g, lines.get(i), Theme.TEXT, Tone.MUTED, 0, HEAD_PX + 24.0 + i * 18, 0);
        }
    }
}
