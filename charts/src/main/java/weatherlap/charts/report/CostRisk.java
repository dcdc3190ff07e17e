package weatherlap.charts.report;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Axes;
import weatherlap.charts.kit.Frame;
import weatherlap.charts.kit.Layer;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.Marks;
import weatherlap.charts.kit.MethodStyle;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.Placement;
import weatherlap.charts.kit.RowAxis;
import weatherlap.charts.kit.Scales;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.Check;
import weatherlap.sim.method.Contrast;

/**
 * Cost difference against risk difference, the first method less the second, one point a house.
 *
 * @param contrast the two methods
 * @param scope what is counted, for the line under the title
 * @param cost which cost is compared, without its unit: cost over 15 years
 * @param risk which risk, a probability: chance of a leak within 15 years
 * @param houses one point each
 */
public record CostRisk(Contrast contrast, String scope, String cost, String risk, List<House> houses)
        implements Picture {

    /**
     * One house.
     *
     * @param label names it where there is room
     * @param category what groups it: its cladding, say
     * @param costDifferenceUsd first less second, USD
     * @param riskDifference first less second, a difference of probabilities, −1 to 1
     * @param marked whether to ring and name it: a house of the efficient set, say
     */
    public record House(
            String label, String category, double costDifferenceUsd, double riskDifference, boolean marked) {
        public House {
            Check.text("label", label);
            Check.text("category", category);
            Check.finite("cost difference", costDifferenceUsd);
            Check.within("risk difference", riskDifference, -1, 1);
        }
    }

    private static final int CATEGORIES = Marks.CATEGORY.size();
    private static final String OTHER = "other";
    private static final double LABEL_PX = 150;

    public CostRisk {
        Check.text("cost", cost);
        Check.text("risk", risk);
        houses = List.copyOf(houses);
    }

    @Override
    public String name() {
        return "cost-against-risk";
    }

    @Override
    public String title() {
        return "Cost against leak risk, house by house: " + contrast.less();
    }

    @Override
    public int heightPx() {
        return houses.isEmpty() ? Frame.EMPTY_PX : 500;
    }

    @Override
    public String message() {
        if (houses.isEmpty()) {
            return "There are no houses to compare.";
        }
        return "Of " + Numbers.count(houses.size(), "house", "houses") + ", "
                + contrast.first().inSentence() + " costs more and leaks less in "
                + count(h -> h.costDifferenceUsd() > 0 && h.riskDifference() < 0) + ", costs less and leaks less in "
                + count(h -> h.costDifferenceUsd() <= 0 && h.riskDifference() < 0)
                + "; " + contrast.second().inSentence() + " leaks no more and costs less in "
                + count(h -> h.costDifferenceUsd() > 0 && h.riskDifference() >= 0)
                + ", leaks no more and costs no less in "
                + count(h -> h.costDifferenceUsd() <= 0 && h.riskDifference() >= 0) + ". The median differences are "
                + Numbers.signedUsd(median(House::costDifferenceUsd)) + " and "
                + Numbers.signed(median(House::riskDifference) * 100, 1) + " percentage points.";
    }

    private String count(Predicate<House> which) {
        return Numbers.plain(houses.stream().filter(which).count(), 0);
    }

    private double median(ToDoubleFunction<House> value) {
        double[] sorted = houses.stream().mapToDouble(value).sorted().toArray();
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    /** Houses by category, the largest categories first; those beyond the shapes there are go together. */
    Map<String, List<House>> byCategory() {
        Map<String, List<House>> all = new TreeMap<>();
        houses.forEach(
                h -> all.computeIfAbsent(h.category(), c -> new ArrayList<>()).add(h));
        List<String> order = all.keySet().stream()
                .sorted(Comparator.comparingInt((String c) -> -all.get(c).size()))
                .toList();
        Map<String, List<House>> shown = new LinkedHashMap<>();
        for (int i = 0; i < order.size(); i++) {
            String category = i < CATEGORIES - 1 || order.size() == CATEGORIES ? order.get(i) : OTHER;
            shown.computeIfAbsent(category, c -> new ArrayList<>()).addAll(all.get(order.get(i)));
        }
        return shown;
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, "one point a house; " + scope);
        if (houses.isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        Lettering.draw(g, riskLabel(), Theme.SMALL, Tone.MUTED, 0, Frame.HEAD_PX + 10, 0);
        shapeKey(g);
        Frame.body(g, this, 40, plot());
    }

    private String riskLabel() {
        return "\u2191 " + Lettering.axis(risk, ", " + contrast.less() + ", percentage points");
    }

    NumberAxis costAxis() {
        return Axes.value(
                Lettering.axis(cost, ", " + contrast.less() + ", USD \u2192"),
                Axes.Format.SIGNED_USD,
                true,
                houses.stream().mapToDouble(House::costDifferenceUsd));
    }

    NumberAxis riskAxis() {
        return Axes.value(
                null,
                Axes.Format.SIGNED_POINTS,
                true,
                DoubleStream.concat(
                        DoubleStream.of(-0.01, 0.01), houses.stream().mapToDouble(House::riskDifference)));
    }

    private void shapeKey(Graphics2D g) {
        double x = 0;
        double y = Frame.HEAD_PX + 30;
        int i = 0;
        double room = widthPx() / (double) byCategory().size();
        for (String category : byCategory().keySet()) {
            Shape mark =
                    AffineTransform.getTranslateInstance(x + 6, y - 4).createTransformedShape(Marks.CATEGORY.get(i++));
            g.setPaint(Tone.MUTED.color());
            g.fill(mark);
            String text = Lettering.fit(category, Theme.SMALL, room - 26);
            Lettering.draw(g, text, Theme.SMALL, Tone.INK, x + 16, y, 0);
            x += 16 + Lettering.width(text, Theme.SMALL) + 18;
        }
    }

    private XYPlot plot() {
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        renderer.setUseFillPaint(true);
        renderer.setDrawOutlines(true);
        renderer.setUseOutlinePaint(true);
        byCategory().forEach((category, members) -> {
            int i = data.getSeriesCount();
            XYSeries series = new XYSeries(category, false, true);
            members.forEach(h -> series.add(h.costDifferenceUsd(), h.riskDifference()));
            data.addSeries(series);
            renderer.setSeriesShape(i, Marks.CATEGORY.get(i));
            renderer.setSeriesFillPaint(i, Tone.MUTED.color());
            renderer.setSeriesOutlinePaint(i, Color.WHITE);
            renderer.setSeriesOutlineStroke(i, Theme.HAIRLINE);
        });
        XYPlot plot = RowAxis.upright(new XYPlot(data, costAxis(), riskAxis(), renderer));
        plot.setDomainZeroBaselineVisible(true);
        plot.setDomainZeroBaselinePaint(Tone.RULE.color());
        plot.addAnnotation(((Layer) this::labels).annotation());
        return plot;
    }

    /** The quadrants in words, in their outer corners, and the marked houses by name. */
    private void labels(Graphics2D g, Scales s) {
        Placement placement = new Placement(s.area());
        houses.forEach(h -> placement.keepFree(at(h, s)));
        quadrants().forEach(quadrant -> quadrant.draw(g, s, placement));
        g.setStroke(Theme.stroke(1.5f));
        g.setPaint(Tone.INK.color());
        for (House house : houses) {
            if (house.marked()) {
                Point2D point = at(house, s);
                g.draw(new Ellipse2D.Double(point.getX() - 7, point.getY() - 7, 14, 14));
            }
        }
        houses.stream().filter(House::marked).forEach(house -> {
            String text = Lettering.fit(house.label(), Theme.SMALL, LABEL_PX);
            placement
                    .place(text, Theme.SMALL, at(house, s))
                    .ifPresent(box -> Placement.draw(g, text, Theme.SMALL, Tone.INK, box));
        });
    }

    private static Point2D at(House house, Scales s) {
        return new Point2D.Double(s.xPx(house.costDifferenceUsd()), s.yPx(house.riskDifference()));
    }

    private List<Quadrant> quadrants() {
        String first = contrast.first().label();
        String second = contrast.second().label();
        Tone forFirst = MethodStyle.of(contrast.first()).text();
        Tone forSecond = MethodStyle.of(contrast.second()).text();
        return List.of(
                new Quadrant(true, true, second + ": costs less, leaks less", forSecond),
                new Quadrant(true, false, first + ": costs more, leaks less", Tone.INK),
                new Quadrant(false, true, first + ": costs less, leaks more", Tone.INK),
                new Quadrant(false, false, first + ": costs less, leaks less", forFirst));
    }
}
