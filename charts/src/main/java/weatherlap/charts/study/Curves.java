package weatherlap.charts.study;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import weatherlap.charts.kit.Axes;
import weatherlap.charts.kit.Frame;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.RowAxis;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.Check;

/**
 * A few curves over one axis, told apart by color and by whether they are dashed.
 *
 * @param name stem of the file
 * @param scope what is counted, for the line under the title
 * @param message what it shows
 * @param across what runs to the right
 * @param up what rises
 * @param percent whether what rises is a share
 */
public record Curves(
        String name,
        String title,
        String scope,
        String message,
        String across,
        String up,
        boolean percent,
        List<Curve> curves)
        implements Picture {
    private static final int HEIGHT_PX = 380;
    private static final int KEY_PX = 190;
    private static final int LONGEST_LABEL_PX = 150;

    /** A curve through points, x not falling. */
    public record Curve(String label, Color color, boolean dashed, List<Double> x, List<Double> y) {
        public Curve {
            Check.text("label", label);
            x = List.copyOf(x);
            y = List.copyOf(y);
            DoubleStream.concat(x.stream().mapToDouble(v -> v), y.stream().mapToDouble(v -> v))
                    .forEach(value -> Check.finite("point", value));
            if (x.size() != y.size()) {
                throw new IllegalArgumentException("A curve has as many x as y.");
            }
        }
    }

    public Curves {
        curves = List.copyOf(curves);
    }

    @Override
    public int heightPx() {
        return curves.isEmpty() ? Frame.EMPTY_PX : HEIGHT_PX;
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, scope);
        if (curves.isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        int rows = key(g);
        Lettering.draw(
                g, "\u2191 " + Lettering.axis(up, ""), Theme.SMALL, Tone.MUTED, 0, Frame.HEAD_PX + 8 + 16.0 * rows, 0);
        Frame.body(g, this, 10 + 16 * (rows + 1), plot());
    }

    /** The key; how many lines it took. */
    private int key(Graphics2D g) {
        int aLine = Math.max(1, Theme.WIDTH_PX / KEY_PX);
        for (int i = 0; i < curves.size(); i++) {
            Curve curve = curves.get(i);
            double x = (i % aLine) * (double) KEY_PX;
            double y = Frame.HEAD_PX + 8 + 16.0 * (i / aLine);
            g.setPaint(curve.color());
            g.setStroke(stroke(curve));
            g.draw(new Line2D.Double(x, y - 4, x + 26, y - 4));
            Lettering.draw(
                    g,
                    Lettering.fit(curve.label(), Theme.SMALL, LONGEST_LABEL_PX),
                    Theme.SMALL,
                    Tone.INK,
                    x + 32,
                    y,
                    0);
        }
        return (curves.size() + aLine - 1) / aLine;
    }

    private XYPlot plot() {
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        for (Curve curve : curves) {
            int index = data.getSeriesCount();
            XYSeries series = new XYSeries(index + " " + Lettering.clean(curve.label()), false, true);
            for (int i = 0; i < curve.x().size(); i++) {
                series.add(curve.x().get(i), curve.y().get(i));
            }
            data.addSeries(series);
            renderer.setSeriesPaint(index, curve.color());
            renderer.setSeriesStroke(index, stroke(curve));
        }
        return RowAxis.upright(new XYPlot(
                data,
                Axes.value(Lettering.axis(across, ""), Axes.Format.PLAIN, true, values(Curve::x)),
                Axes.value(null, percent ? Axes.Format.PERCENT : Axes.Format.PLAIN, !percent, values(Curve::y)),
                renderer));
    }

    private DoubleStream values(Function<Curve, List<Double>> of) {
        return curves.stream().flatMap(curve -> of.apply(curve).stream()).mapToDouble(v -> v);
    }

    private static BasicStroke stroke(Curve curve) {
        return curve.dashed()
                ? new BasicStroke(1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {5, 4}, 0)
                : new BasicStroke(2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }
}
