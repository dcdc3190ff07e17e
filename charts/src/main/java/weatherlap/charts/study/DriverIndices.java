package weatherlap.charts.study;

import java.awt.Color;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Axes;
import weatherlap.charts.kit.Frame;
import weatherlap.charts.kit.Hatch;
import weatherlap.charts.kit.Layer;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.MethodStyle;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.RowAxis;
import weatherlap.charts.kit.Spread;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.Check;

/**
 * Which assumptions drive an outcome: the share of its variance that each explains alone (first-order index) and with all its
 * interactions (total index).
 *
 * @param scope what is counted, for the line under the title
 * @param outcome what is driven: the cost difference
 * @param drivers in any order; the picture shows the largest total first
 */
public record DriverIndices(String scope, String outcome, List<Driver> drivers) implements Picture {

    /** An assumption, its two indices, and a standard error of each; an estimate may stray a little outside of 0 to 1. */
    public record Driver(String label, double firstOrder, double firstOrderError, double total, double totalError) {
        public Driver {
            Check.text("label", label);
            Check.finite("first-order index", firstOrder);
            Check.notNegative("first-order error", firstOrderError);
            Check.finite("total index", total);
            Check.notNegative("total error", totalError);
        }
    }

    private static final int RIGHT_PX = 140;
    private static final Color TOTAL = Theme.mix(Tone.MUTED.color(), Tone.PAPER.color(), 0.55);

    public DriverIndices {
        Check.text("outcome", outcome);
        drivers = drivers.stream()
                .sorted(Comparator.comparingDouble(Driver::total).reversed())
                .toList();
    }

    @Override
    public String name() {
        return "driver-indices";
    }

    @Override
    public String title() {
        return "Which assumptions drive the answer";
    }

    @Override
    public int heightPx() {
        return Frame.HEAD_PX + 38 * Math.max(2, drivers.size()) + 44;
    }

    @Override
    public String message() {
        if (drivers.isEmpty()) {
            return "There are no assumptions to rank.";
        }
        List<String> first = drivers.stream()
                .limit(3)
                .map(d ->
                        Lettering.clean(d.label()) + " (" + index(d.total()) + ", alone " + index(d.firstOrder()) + ")")
                .toList();
        return "Of " + Numbers.count(drivers.size(), "assumption", "assumptions")
                + ", those that explain most of the variance of " + Lettering.clean(outcome) + " are "
                + InWords.list(first)
                + ".";
    }

    private static String index(double value) {
        return Numbers.percent(value, 0);
    }

    NumberAxis axis() {
        return Axes.value(
                Lettering.axis("share of the variance of " + outcome, ", %; lines: one standard error"),
                Axes.Format.PERCENT,
                true,
                drivers.stream()
                        .flatMapToDouble(d -> DoubleStream.of(
                                d.firstOrder() - d.firstOrderError(),
                                d.firstOrder() + d.firstOrderError(),
                                d.total() - d.totalError(),
                                d.total() + d.totalError())));
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, scope);
        if (drivers.isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        XYPlot plot = RowAxis.plot(drivers.stream().map(Driver::label).toList(), axis(), Theme.WIDTH_PX, RIGHT_PX);
        List<RowAxis.Dot> alone = new ArrayList<>();
        List<RowAxis.Dot> whole = new ArrayList<>();
        for (int i = 0; i < drivers.size(); i++) {
            Driver d = drivers.get(i);
            alone.add(new RowAxis.Dot(i + 0.31, around(d.firstOrder(), d.firstOrderError())));
            whole.add(new RowAxis.Dot(i + 0.69, around(d.total(), d.totalError())));
        }
        add(plot, alone, Tone.MUTED.color(), "alone");
        add(plot, whole, TOTAL, "with interactions");
        Frame.body(g, this, plot);
    }

    private static Spread around(double index, double error) {
        return new Spread(index - error, index, index + error);
    }

    private static void add(XYPlot plot, List<RowAxis.Dot> dots, Color fill, String name) {
        List<RowAxis.Bar> bars = dots.stream()
                .map(dot -> new RowAxis.Bar(
                        dot.row() - 0.17, dot.row() + 0.17, 0, dot.spread().middle()))
                .toList();
        RowAxis.add(plot, RowAxis.bars(bars, name), Hatch.bars(fill, false));
        XYErrorRenderer errors = new XYErrorRenderer();
        errors.setDrawXError(false);
        errors.setCapLength(0);
        errors.setDefaultShapesVisible(false);
        errors.setErrorPaint(Tone.INK.color());
        errors.setErrorStroke(Theme.THIN);
        RowAxis.add(plot, RowAxis.dots(dots, MethodStyle.FULL_FLANGE), errors);
        plot.addAnnotation(((Layer) (g, s) -> {
                    for (int i = 0; i < dots.size(); i++) {
                        double x = s.xPx(Math.max(0, dots.get(i).spread().high())) + 7;
                        String text = index(dots.get(i).spread().middle()) + (i == 0 ? " " + name : "");
                        Lettering.draw(
                                g,
                                text,
                                Theme.SMALL,
                                Tone.INK,
                                x,
                                s.yPx(dots.get(i).row()) + 4,
                                0);
                    }
                })
                .annotation());
    }
}
