package weatherlap.charts.report;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import weatherlap.charts.kit.Hatch;
import weatherlap.charts.kit.Layer;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.MethodStyle;
import weatherlap.charts.kit.Pair;
import weatherlap.charts.kit.RowAxis;
import weatherlap.charts.kit.Spread;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;

/**
 * RowAxis that carry both methods, the first above the second, each with its number beside it; the first row also names the
 * methods.
 */
final class PairRows {

    /** Room right of the plot for a number and a method's name, px. */
    private static final int RIGHT_PX = 130;

    private PairRows() {}

    /** A row with a range for each method; a method without a value is null. */
    record Ranges(String label, Pair<Spread> values) {}

    static XYPlot dots(Contrast contrast, List<Ranges> rows, NumberAxis axis, DoubleFunction<String> text) {
        XYPlot plot = RowAxis.plot(rows.stream().map(Ranges::label).toList(), axis, Theme.WIDTH_PX, RIGHT_PX);
        for (Method method : contrast.both()) {
            List<RowAxis.Dot> dots = new ArrayList<>();
            for (int i = 0; i < rows.size(); i++) {
                if (rows.get(i).values().of(contrast, method) != null) {
                    dots.add(new RowAxis.Dot(
                            i + line(contrast, method), rows.get(i).values().of(contrast, method)));
                }
            }
            RowAxis.addDots(plot, dots, MethodStyle.of(method));
            plot.addAnnotation(((Layer) (g, s) -> {
                        for (int k = 0; k < dots.size(); k++) {
                            Spread spread = dots.get(k).spread();
                            double x = Math.max(s.xPx(spread.high()), s.xPx(spread.middle()) + 6);
                            number(
                                    g,
                                    method,
                                    text.apply(spread.middle()),
                                    x,
                                    s.yPx(dots.get(k).row()),
                                    k == 0);
                        }
                    })
                    .annotation());
        }
        return plot;
    }

    /** A row with an amount for each method. */
    record Amounts(String label, Pair<Double> values) {}

    static XYPlot bars(Contrast contrast, List<Amounts> rows, NumberAxis axis, DoubleFunction<String> text) {
        XYPlot plot = RowAxis.plot(rows.stream().map(Amounts::label).toList(), axis, Theme.WIDTH_PX, RIGHT_PX);
        for (Method method : contrast.both()) {
            double middle = line(contrast, method);
            List<RowAxis.Bar> bars = new ArrayList<>();
            for (int i = 0; i < rows.size(); i++) {
                bars.add(new RowAxis.Bar(
                        i + middle - 0.17,
                        i + middle + 0.17,
                        0,
                        rows.get(i).values().of(contrast, method)));
            }
            RowAxis.add(
                    plot,
                    RowAxis.bars(bars, method.label()),
                    Hatch.bars(
                            MethodStyle.of(method).color(),
                            MethodStyle.of(method).hatched()));
            int named = largest(rows);
            plot.addAnnotation(((Layer) (g, s) -> {
                        for (int i = 0; i < bars.size(); i++) {
                            double y = s.yPx(i + middle);
                            number(
                                    g,
                                    method,
                                    text.apply(bars.get(i).to()),
                                    s.xPx(bars.get(i).to()),
                                    y,
                                    i == named);
                        }
                    })
                    .annotation());
        }
        return plot;
    }

    /** The first row in which both methods have an amount; there the methods are named. */
    private static int largest(List<Amounts> rows) {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).values().first() > 0 && rows.get(i).values().second() > 0) {
                return i;
            }
        }
        return 0;
    }

    private static double line(Contrast contrast, Method method) {
        return method == contrast.first() ? 0.31 : 0.69;
    }

    private static void number(Graphics2D g, Method method, String text, double x, double y, boolean named) {
        Lettering.draw(g, text, Theme.SMALL, Tone.INK, x + 7, y + 4, 0);
        if (named) {
            double after = x + 7 + Lettering.width(text, Theme.SMALL) + 6;
            Lettering.draw(
                    g,
                    method.label(),
                    Theme.SMALL_STRONG,
                    MethodStyle.of(method).text(),
                    after,
                    y + 4,
                    0);
        }
    }
}
