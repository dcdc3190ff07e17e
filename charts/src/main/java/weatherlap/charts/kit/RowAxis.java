package weatherlap.charts.kit;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.IntervalXYDataset;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;

/** Plots with a named row for each thing and values along the page: bars, dots, ranges. Row i reaches from i to i + 1. */
public final class RowAxis {

    private static final double LABEL_SHARE = 0.3;
    private static final int LINE_PX = 15;

    private RowAxis() {}

    /**
     * A plot without data yet.
     *
     * @param rightPx room kept free right of the values, for labels
     */
    public static XYPlot plot(List<String> labels, NumberAxis values, int widthPx, int rightPx) {
        return plot(labels, 0.5, values, widthPx, rightPx);
    }

    /** The same with the labels elsewhere than at half the height of their rows. */
    public static XYPlot plot(List<String> labels, double at, NumberAxis values, int widthPx, int rightPx) {
        XYPlot plot = themed(new XYPlot(null, Axes.rows(labels.size()), values, null));
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
        plot.setDomainGridlinesVisible(false);
        double room = Math.min(widthPx * LABEL_SHARE, widest(labels)) + 2 * Theme.SPACE_PX;
        AxisSpace sides = new AxisSpace();
        sides.setLeft(room);
        sides.setRight(rightPx);
        plot.setFixedDomainAxisSpace(sides);
        plot.addAnnotation(((Layer) (g, s) -> labels(g, s, labels, at, room)).annotation());
        return plot;
    }

    private static double widest(List<String> labels) {
        return labels.stream()
                .mapToDouble(label -> Lettering.width(Lettering.clean(label), Theme.TEXT))
                .max()
                .orElse(0);
    }

    private static void labels(Graphics2D g, Scales s, List<String> labels, double at, double room) {
        for (int i = 0; i < labels.size(); i++) {
            double rowPx = s.yPx(i + 1) - s.yPx(i);
            List<String> lines =
                    Lettering.wrap(labels.get(i), Theme.TEXT, room - 2 * Theme.SPACE_PX, rowPx >= 2 * LINE_PX ? 2 : 1);
            double baseline = s.yPx(i + at) + 4 - (lines.size() - 1) * LINE_PX / 2.0;
            for (int k = 0; k < lines.size(); k++) {
                Lettering.draw(
                        g,
                        lines.get(k),
                        Theme.TEXT,
                        Tone.INK,
                        s.area().getMinX() - Theme.SPACE_PX,
                        baseline + k * LINE_PX,
                        1);
            }
        }
    }

    public static XYPlot themed(XYPlot plot) {
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setInsets(RectangleInsets.ZERO_INSETS);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setDomainGridlinePaint(Tone.LINE.color());
        plot.setRangeGridlinePaint(Tone.LINE.color());
        plot.setDomainGridlineStroke(Theme.HAIRLINE);
        plot.setRangeGridlineStroke(Theme.HAIRLINE);
        plot.setRangeZeroBaselineVisible(true);
        plot.setRangeZeroBaselinePaint(Tone.RULE.color());
        plot.setRangeZeroBaselineStroke(Theme.THIN);
        return plot;
    }

    /** The theme for a plot whose values stand upright, with room at its right for half a number. */
    public static XYPlot upright(XYPlot plot) {
        themed(plot);
        plot.setInsets(new RectangleInsets(6, 0, 0, 36));
        return plot;
    }

    /** A mark for each row: its middle, and its range as a line. */
    public record Dot(double row, Spread spread) {}

    /** Adds dots with ranges in a method's style. */
    public static void addDots(XYPlot plot, List<Dot> dots, MethodStyle style) {
        XYErrorRenderer renderer = new XYErrorRenderer();
        renderer.setDrawXError(false);
        renderer.setDrawYError(true);
        renderer.setCapLength(0);
        renderer.setErrorPaint(style.color());
        renderer.setErrorStroke(style.range());
        renderer.setSeriesPaint(0, style.color());
        renderer.setSeriesShape(0, style.mark());
        add(plot, dots(dots, style), renderer);
    }

    public static IntervalXYDataset dots(List<Dot> dots, MethodStyle style) {
        XYIntervalSeries series = new XYIntervalSeries(style.label(), false, true);
        for (Dot dot : dots) {
            Spread y = dot.spread();
            series.add(dot.row(), dot.row(), dot.row(), y.middle(), y.low(), y.high());
        }
        return collection(List.of(series));
    }

    /** A bar from one value to another, across part of a row. */
    public record Bar(double top, double bottom, double from, double to) {}

    public static IntervalXYDataset bars(List<Bar> bars, String name) {
        XYIntervalSeries series = new XYIntervalSeries(name, false, true);
        for (Bar bar : bars) {
            double row = (bar.top() + bar.bottom()) / 2;
            series.add(
                    row,
                    bar.top(),
                    bar.bottom(),
                    bar.to(),
                    Math.min(bar.from(), bar.to()),
                    Math.max(bar.from(), bar.to()));
        }
        return collection(List.of(series));
    }

    public static void add(XYPlot plot, IntervalXYDataset data, XYItemRenderer renderer) {
        int index = plot.getDataset(0) == null ? 0 : plot.getDatasetCount();
        plot.setDataset(index, data);
        plot.setRenderer(index, renderer);
    }

    private static IntervalXYDataset collection(List<XYIntervalSeries> series) {
        XYIntervalSeriesCollection collection = new XYIntervalSeriesCollection();
        new ArrayList<>(series).forEach(collection::addSeries);
        return collection;
    }
}
