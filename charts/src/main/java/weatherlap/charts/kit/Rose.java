package weatherlap.charts.kit;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.PolarPlot;
import org.jfree.chart.renderer.DefaultPolarItemRenderer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import weatherlap.analysis.words.Compass;
import weatherlap.analysis.words.Numbers;

/** Draws quantities by bearing: north on top, clockwise, two curves told apart by colour, line and mark. */
public final class Rose {

    public static final int HEIGHT_PX = Frame.HEAD_PX + 352;
    private static final int SIDE_PX = 352;
    private static final int NOTES_PX = 400;
    private static final int MARKED_RAYS = 24;

    /** Nearer to the middle than this, numbers would run into each other. */
    private static final double CLEAR_PX = 40;

    private static final double TICK_BEARING_DEG = 157.5;

    private Rose() {}

    /** A value at a bearing, degrees clockwise from north. */
    public record Ray(double bearingDeg, double value) {}

    /** One curve of a rose. */
    public record Curve(String label, MethodStyle style, Color color, Tone text, List<Ray> rays) {
        public Ray highest() {
            return rays.stream().max(Comparator.comparingDouble(Ray::value)).orElseThrow();
        }

        public Ray lowest() {
            return rays.stream().min(Comparator.comparingDouble(Ray::value)).orElseThrow();
        }
    }

    public static void draw(
            Graphics2D g, List<Curve> curves, NumberAxis axis, DoubleFunction<String> text, String unit) {
        axis.setTickLabelsVisible(false);
        DefaultPolarItemRenderer renderer = new DefaultPolarItemRenderer();
        XYSeriesCollection data = new XYSeriesCollection();
        for (Curve curve : curves) {
            int index = data.getSeriesCount();
            data.addSeries(series(curve));
            renderer.setSeriesPaint(index, curve.color());
            renderer.setSeriesStroke(index, curve.style().line());
            renderer.setSeriesShape(index, curve.style().mark());
        }
        renderer.setShapesVisible(curves.stream().allMatch(c -> c.rays().size() <= MARKED_RAYS));
        renderer.setUseFillPaint(false);
        PolarPlot plot = plot(data, axis, renderer);
        PlotRenderingInfo info = new PlotRenderingInfo(new ChartRenderingInfo(null));
        plot.draw(g, new Rectangle2D.Double(0, Frame.HEAD_PX - 4, SIDE_PX, SIDE_PX), null, null, info);
        ticks(g, plot, axis, info.getDataArea());
        double y = Frame.HEAD_PX + 60.0;
        for (Curve curve : curves) {
            note(g, curve, text, unit, y);
            y += 104;
        }
    }

    /** The numbers of the circles, between south-east and south, clear of the compass. */
    private static void ticks(Graphics2D g, PolarPlot plot, NumberAxis axis, Rectangle2D area) {
        double step = axis.getTickUnit().getSize();
        double first = step * Math.ceil(CLEAR_PX / (SIDE_PX / 2.0) * axis.getUpperBound() / step);
        for (double value = first; value <= axis.getUpperBound() * (1 + 1e-9); value += step) {
            Point at = plot.translateToJava2D(TICK_BEARING_DEG, value, axis, area);
            String text = axis.getTickUnit().valueToString(value);
            Rectangle2D box =
                    Lettering.box(text, Theme.SMALL, at.x - Lettering.width(text, Theme.SMALL) / 2, at.y + 4.0);
            Placement.draw(g, text, Theme.SMALL, Tone.MUTED, box);
        }
    }

    private static XYSeries series(Curve curve) {
        XYSeries series = new XYSeries(curve.label(), true, true);
        curve.rays().forEach(ray -> series.add(ray.bearingDeg(), ray.value()));
        return series;
    }

    @SuppressWarnings("serial")
    private static PolarPlot plot(XYSeriesCollection data, NumberAxis axis, DefaultPolarItemRenderer renderer) {
        PolarPlot plot = new PolarPlot(data, axis, renderer) {
            @Override
            protected List<NumberTick> refreshAngleTicks() {
                return IntStream.range(0, 8)
                        .mapToObj(i -> new NumberTick(
                                i * 45.0,
                                Compass.letters(i * 45.0),
                                calculateTextAnchor(i * 45.0),
                                TextAnchor.CENTER,
                                0))
                        .toList();
            }
        };
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setInsets(new RectangleInsets(4, 4, 4, 4));
        plot.setAngleLabelFont(Theme.TEXT);
        plot.setAngleLabelPaint(Tone.INK.color());
        plot.setAngleGridlinePaint(Tone.LINE.color());
        plot.setRadiusGridlinePaint(Tone.LINE.color());
        plot.setAngleGridlineStroke(Theme.HAIRLINE);
        plot.setRadiusGridlineStroke(Theme.HAIRLINE);
        plot.setRadiusMinorGridlinesVisible(false);
        return plot;
    }

    /** What a curve is and where it is highest and lowest. */
    private static void note(Graphics2D g, Curve curve, DoubleFunction<String> text, String unit, double y) {
        g.setPaint(curve.color());
        Stroke line = curve.style().line();
        g.setStroke(line);
        g.draw(new Line2D.Double(NOTES_PX, y - 4, NOTES_PX + 36, y - 4));
        Shape mark = AffineTransform.getTranslateInstance(NOTES_PX + 18.0, y - 4)
                .createTransformedShape(curve.style().mark());
        if (curve.rays().size() <= MARKED_RAYS) {
            g.fill(mark);
        }
        double room = Theme.WIDTH_PX - NOTES_PX - 44.0;
        Lettering.draw(
                g, Lettering.fit(curve.label(), Theme.STRONG, room), Theme.STRONG, curve.text(), NOTES_PX + 44.0, y, 0);
        line(g, "highest " + text.apply(curve.highest().value()) + unit, curve.highest(), y + 20);
        line(g, "lowest " + text.apply(curve.lowest().value()) + unit, curve.lowest(), y + 38);
    }

    private static void line(Graphics2D g, String value, Ray ray, double y) {
        String words =
                value + " (" + Compass.word(ray.bearingDeg()) + ", " + Numbers.plain(ray.bearingDeg(), 0) + "\u00b0)";
        Lettering.draw(
                g,
                Lettering.fit(words, Theme.TEXT, Theme.WIDTH_PX - NOTES_PX - 44.0),
                Theme.TEXT,
                Tone.MUTED,
                NOTES_PX + 44.0,
                y,
                0);
    }
}
