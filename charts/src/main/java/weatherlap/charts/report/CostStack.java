package weatherlap.charts.report;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Axes;
import weatherlap.charts.kit.Frame;
import weatherlap.charts.kit.Hatch;
import weatherlap.charts.kit.Layer;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.MethodStyle;
import weatherlap.charts.kit.Pair;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.RowAxis;
import weatherlap.charts.kit.Scales;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.Check;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;

/**
 * What the cost of a job is made of, for both methods.
 *
 * @param contrast the two methods
 * @param scope what is counted, for the line under the title
 * @param per what the amounts are for: a house, a window
 * @param parts in the order in which they are stacked: labour, material, overhead, …
 */
public record CostStack(Contrast contrast, String scope, String per, List<Part> parts) implements Picture {

    /**
     * A part of the cost.
     *
     * @param label its name
     * @param usd USD, 0 or above, for each method
     */
    public record Part(String label, Pair<Double> usd) {
        public Part {
            Check.text("label", label);
            Check.notNegative("first USD", usd.first());
            Check.notNegative("second USD", usd.second());
        }
    }

    private static final int ROW_PX = 104;
    private static final double BAR_TOP = 0.12;
    private static final double BAR_BOTTOM = 0.5;
    private static final double LIGHTEST = 0.72;
    private static final int RIGHT_PX = 84;
    private static final double AXIS_PX = 500;

    public CostStack {
        Check.text("per", per);
        parts = List.copyOf(parts);
    }

    @Override
    public String name() {
        return "cost-stack";
    }

    @Override
    public String title() {
        return "What the money goes into";
    }

    @Override
    public int heightPx() {
        return Frame.HEAD_PX + 2 * ROW_PX + 44;
    }

    /** The whole of a method, USD. */
    double total(Method method) {
        return parts.stream()
                .mapToDouble(part -> part.usd().of(contrast, method))
                .sum();
    }

    @Override
    public String message() {
        if (parts.isEmpty()) {
            return "There are no costs to show.";
        }
        return "Per " + Lettering.clean(per) + ", " + sentence(contrast.first()) + "; " + sentence(contrast.second())
                + ".";
    }

    private String sentence(Method method) {
        return method.label() + " comes to " + Numbers.usd(total(method)) + ": "
                + parts.stream()
                        .map(part -> Lettering.clean(part.label()) + " "
                                + Numbers.usd(part.usd().of(contrast, method)))
                        .collect(Collectors.joining(", "));
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, scope);
        if (parts.isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        Frame.body(g, this, plot());
    }

    NumberAxis axis() {
        return Axes.value(
                Lettering.fit("USD per " + per, Theme.SMALL, AXIS_PX),
                Axes.Format.USD,
                true,
                contrast.both().stream().mapToDouble(this::total));
    }

    private XYPlot plot() {
        XYPlot plot = RowAxis.plot(
                contrast.both().stream().map(Method::label).toList(),
                (BAR_TOP + BAR_BOTTOM) / 2,
                axis(),
                Theme.WIDTH_PX,
                RIGHT_PX);
        for (Method method : contrast.both()) {
            List<RowAxis.Bar> bars = bars(method);
            for (int i = 0; i < bars.size(); i++) {
                RowAxis.add(
                        plot,
                        RowAxis.bars(List.of(bars.get(i)), parts.get(i).label()),
                        Hatch.bars(fill(method, i), false));
            }
            plot.addAnnotation(((Layer) (g, s) -> labels(g, s, method, bars)).annotation());
        }
        return plot;
    }

    /** One bar a part, each starting where the one before ends. */
    List<RowAxis.Bar> bars(Method method) {
        List<RowAxis.Bar> bars = new ArrayList<>();
        double from = 0;
        for (Part part : parts) {
            double to = from + part.usd().of(contrast, method);
            bars.add(new RowAxis.Bar(row(method) + BAR_TOP, row(method) + BAR_BOTTOM, from, to));
            from = to;
        }
        return bars;
    }

    private int row(Method method) {
        return contrast.both().indexOf(method);
    }

    private Color fill(Method method, int part) {
        double share = parts.size() < 2 ? 0 : LIGHTEST * part / (parts.size() - 1);
        return Theme.mix(MethodStyle.of(method).color(), Tone.PAPER.color(), share);
    }

    /** Names and amounts under the bar, each with a line to its part. */
    private void labels(Graphics2D g, Scales s, Method method, List<RowAxis.Bar> bars) {
        double top = s.yPx(row(method) + BAR_TOP);
        double bottom = s.yPx(row(method) + BAR_BOTTOM);
        double[] wanted = bars.stream()
                .mapToDouble(bar -> s.xPx((bar.from() + bar.to()) / 2))
                .toArray();
        double room = Theme.WIDTH_PX - s.area().getMinX();
        double[] sizes =
                parts.stream().mapToDouble(part -> width(part, method) + 12).toArray();
        double crowding = Math.min(1, room / DoubleStream.of(sizes).sum());
        Arrays.setAll(sizes, i -> sizes[i] * crowding);
        double[] placed = Spacing.apart(wanted, sizes, s.area().getMinX() - 4, Theme.WIDTH_PX);
        g.setStroke(Theme.THIN);
        for (int i = 0; i < bars.size(); i++) {
            if (i > 0) {
                g.setPaint(Tone.PAPER.color());
                g.draw(new Line2D.Double(
                        s.xPx(bars.get(i).from()), top, s.xPx(bars.get(i).from()), bottom));
            }
            g.setPaint(Tone.RULE.color());
            g.draw(new Line2D.Double(wanted[i], bottom - 5, wanted[i], bottom + 5));
            g.draw(new Line2D.Double(wanted[i], bottom + 5, placed[i], bottom + 13));
            String name = Lettering.fit(parts.get(i).label(), Theme.SMALL, sizes[i] - 8);
            Lettering.draw(g, name, Theme.SMALL, Tone.INK, placed[i], bottom + 25, 0.5);
            Lettering.draw(g, amount(i, method), Theme.SMALL, Tone.MUTED, placed[i], bottom + 39, 0.5);
        }
        Lettering.draw(
                g,
                Numbers.usd(total(method)),
                Theme.STRONG,
                MethodStyle.of(method).text(),
                s.xPx(total(method)) + 8,
                (top + bottom) / 2 + 4,
                0);
    }

    private String amount(int part, Method method) {
        return Numbers.usd(parts.get(part).usd().of(contrast, method));
    }

    private double width(Part part, Method method) {
        return Math.max(
                Lettering.width(Lettering.clean(part.label()), Theme.SMALL),
                Lettering.width(Numbers.usd(part.usd().of(contrast, method)), Theme.SMALL));
    }
}
