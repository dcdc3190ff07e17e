package weatherlap.charts.report;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Axes;
import weatherlap.charts.kit.Frame;
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
 * The chance that one house's job costs more than an amount, against the amount, for both methods.
 *
 * @param contrast the two methods
 * @param scope which house, for the line under the title
 * @param total which total: cost of the job, without its unit
 * @param usd simulated totals, USD, in any order
 * @param priceUsd what the family is asked, where the chance of more is that of a loss
 */
public record ChanceOfMore(
        Contrast contrast, String scope, String total, Pair<List<Double>> usd, Optional<Pair<Double>> priceUsd)
        implements Picture {

    private static final int POINTS = 120;
    private static final double SAFE = 0.95;

    public ChanceOfMore {
        Check.text("total", total);
        usd = new Pair<>(sorted(usd.first()), sorted(usd.second()));
    }

    /** Without prices. */
    public ChanceOfMore(Contrast contrast, String scope, String total, Pair<List<Double>> usd) {
        this(contrast, scope, total, usd, Optional.empty());
    }

    private static List<Double> sorted(List<Double> usd) {
        usd.forEach(value -> Check.finite("total", value));
        return usd.stream().sorted().toList();
    }

    @Override
    public String name() {
        return "chance-of-more";
    }

    @Override
    public String title() {
        return "The chance that the job costs more";
    }

    @Override
    public int heightPx() {
        return isEmpty() ? Frame.EMPTY_PX : 400;
    }

    private boolean isEmpty() {
        return usd.first().isEmpty() || usd.second().isEmpty();
    }

    @Override
    public String message() {
        return isEmpty()
                ? "There are no simulated totals to show."
                : InWords.capital(Lettering.clean(total)) + ": " + sentence(contrast.first()) + "; "
                        + sentence(contrast.second()) + "."
                        + priceUsd.map(this::losses).orElse("");
    }

    private String losses(Pair<Double> price) {
        return " At the price quoted the chance of a loss is "
                + both(m -> Numbers.percent(over(m, price.of(contrast, m)), 1) + " (" + m.label() + ", "
                        + Numbers.usd(price.of(contrast, m)) + ")")
                + "; the price that would lose money in one run of twenty is "
                + both(m -> Numbers.usd(quantile(m, SAFE)))
                + ". Prices are made from the mean cost, so the margin aimed at is missed in "
                + both(m -> Numbers.percent(over(m, mean(m)), 0))
                + " of the runs; one run in ten leaves less than "
                + both(m -> Numbers.percent(1 - quantile(m, 0.9) / price.of(contrast, m), 0))
                + " of the price.";
    }

    private String both(Function<Method, String> text) {
        return text.apply(contrast.first()) + " and " + text.apply(contrast.second());
    }

    private double mean(Method method) {
        return usd.of(contrast, method).stream().mapToDouble(v -> v).average().orElseThrow();
    }

    /** Share of the totals above an amount. */
    double over(Method method, double amountUsd) {
        List<Double> all = usd.of(contrast, method);
        return all.stream().filter(total -> total > amountUsd).count() / (double) all.size();
    }

    private String sentence(Method method) {
        return method.label() + " is as likely over as under " + Numbers.usd(quantile(method, 0.5))
                + " and has one chance in ten to exceed " + Numbers.usd(quantile(method, 0.9));
    }

    /** The amount not exceeded with a probability; linear between the draws. */
    double quantile(Method method, double probability) {
        List<Double> sorted = usd.of(contrast, method);
        double place = probability * (sorted.size() - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(below + 1, sorted.size() - 1);
        return sorted.get(below) + (place - below) * (sorted.get(above) - sorted.get(below));
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, scope);
        if (isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        Lettering.draw(g, "\u2191 chance of costing more, %", Theme.SMALL, Tone.MUTED, 0, Frame.HEAD_PX + 8, 0);
        Frame.body(g, this, 22, plot());
    }

    NumberAxis axis() {
        return Axes.value(
                Lettering.axis(total, ", USD"),
                Axes.Format.USD,
                false,
                contrast.both().stream().flatMapToDouble(m -> {
                    double least = quantile(m, 0);
                    double most = quantile(m, 1);
                    return DoubleStream.of(
                            least, most, priceUsd.map(p -> p.of(contrast, m)).orElse(most));
                }));
    }

    /** From (least total, 1) to (greatest total, 0). */
    XYSeries series(Method method) {
        XYSeries series = new XYSeries(method.label(), false, true);
        for (int i = 0; i <= POINTS; i++) {
            double probability = i / (double) POINTS;
            series.add(quantile(method, probability), 1 - probability);
        }
        return series;
    }

    private XYPlot plot() {
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        for (Method method : contrast.both()) {
            renderer.setSeriesPaint(
                    data.getSeriesCount(), MethodStyle.of(method).color());
            renderer.setSeriesStroke(
                    data.getSeriesCount(), MethodStyle.of(method).line());
            data.addSeries(series(method));
        }
        NumberAxis chance = Axes.value(null, Axes.Format.PERCENT, true, DoubleStream.of(1));
        XYPlot plot = RowAxis.upright(new XYPlot(data, axis(), chance, renderer));
        plot.addAnnotation(((Layer) this::labels).annotation());
        priceUsd.ifPresent(price -> plot.addAnnotation(((Layer) (g, s) -> prices(g, s, price)).annotation()));
        return plot;
    }

    /** The amounts exceeded with one chance in two and one in ten, outside of the two curves. */
    private void labels(Graphics2D g, Scales s) {
        for (Method method : contrast.both()) {
            for (double probability : new double[] {0.5, 0.9}) {
                Point2D point = at(method, probability, s);
                g.setPaint(MethodStyle.of(method).color());
                g.fill(AffineTransform.getTranslateInstance(point.getX(), point.getY())
                        .createTransformedShape(MethodStyle.of(method).mark()));
                String amount = Numbers.usd(quantile(method, probability));
                String text = probability == 0.5 ? method.label() + ": " + amount : amount;
                double width = Lettering.width(text, Theme.STRONG);
                boolean lower = isLeft(method, probability);
                boolean left = lower && point.getX() - s.area().getMinX() > width + 14;
                double x = left ? point.getX() - 10 - width : point.getX() + 10;
                Lettering.draw(
                        g, text, Theme.STRONG, MethodStyle.of(method).text(), x, point.getY() + (lower ? 12 : -4), 0);
            }
        }
    }

    /** A mark at each method's price, with the chance that the job costs more. */
    private void prices(Graphics2D g, Scales s, Pair<Double> price) {
        for (Method method : contrast.both()) {
            double x = s.xPx(price.of(contrast, method));
            double bottom = s.area().getMaxY();
            double top = bottom - (method == contrast.second() ? 62 : 92);
            g.setPaint(MethodStyle.of(method).color());
            g.setStroke(Theme.THIN);
            g.draw(new Line2D.Double(x, top, x, bottom));
            String text = "price " + Numbers.usd(price.of(contrast, method)) + ", loss "
                    + Numbers.percent(over(method, price.of(contrast, method)), 1);
            // the curve falls to the right: what stands right of the line is free
            boolean left = x + 6 + Lettering.width(text, Theme.SMALL) > widthPx();
            Lettering.draw(
                    g, text, Theme.SMALL, MethodStyle.of(method).text(), left ? x - 6 : x + 6, top + 8, left ? 1 : 0);
        }
    }

    private boolean isLeft(Method method, double probability) {
        Method other = contrast.other(method);
        double difference = quantile(method, probability) - quantile(other, probability);
        return difference < 0 || (difference == 0 && method == contrast.second());
    }

    private Point2D at(Method method, double probability, Scales s) {
        return new Point2D.Double(s.xPx(quantile(method, probability)), s.yPx(1 - probability));
    }
}
