package weatherlap.charts.kit;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RectangularShape;
import org.jfree.chart.renderer.xy.XYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.ui.RectangleEdge;

/** Fills bars flat, or with oblique lines over the fill, drawn as lines so that every viewer shows them. */
public record Hatch(Color fill, boolean hatched) implements XYBarPainter {

    private static final double GAP_PX = 6;

    /** A renderer of bars that reach from the low to the high end of the data's intervals. */
    public static XYBarRenderer bars(Color fill, boolean hatched) {
        XYBarRenderer renderer = new XYBarRenderer();
        renderer.setUseYInterval(true);
        renderer.setShadowVisible(false);
        renderer.setBarPainter(new Hatch(fill, hatched));
        return renderer;
    }

    @Override
    public void paintBar(
            Graphics2D g, XYBarRenderer renderer, int row, int column, RectangularShape bar, RectangleEdge base) {
        paint(g, bar.getBounds2D());
    }

    @Override
    public void paintBarShadow(
            Graphics2D g,
            XYBarRenderer renderer,
            int row,
            int column,
            RectangularShape bar,
            RectangleEdge base,
            boolean pegShadow) {}

    public void paint(Graphics2D g, Rectangle2D bar) {
        g.setPaint(fill);
        g.fill(bar);
        if (hatched) {
            g.setStroke(Theme.THIN);
            g.setPaint(Theme.mix(fill, Tone.PAPER.color(), 0.55));
            lines(g, bar);
        }
    }

    /** Lines at 45°, x + y constant, cut at the edges of the bar. */
    public static void lines(Graphics2D g, Rectangle2D bar) {
        double width = bar.getWidth();
        double height = bar.getHeight();
        for (double sum = GAP_PX; sum < width + height; sum += GAP_PX) {
            double left = Math.max(0, sum - height);
            double right = Math.min(width, sum);
            g.draw(new Line2D.Double(
                    bar.getX() + left, bar.getY() + sum - left, bar.getX() + right, bar.getY() + sum - right));
        }
    }
}
