package weatherlap.charts.report;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Axes;
import weatherlap.charts.kit.Frame;
import weatherlap.charts.kit.Layer;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.Marks;
import weatherlap.charts.kit.MethodStyle;
import weatherlap.charts.kit.Pair;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.RowAxis;
import weatherlap.charts.kit.Scales;
import weatherlap.charts.kit.Spread;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.Check;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;

/**
 * The range of each house's total by method. A few houses stand in named rows; more of them side by side, the cheapest
 * job of the first method first; very many are thinned to every n-th.
 *
 * @param contrast the two methods
 * @param scope what is counted, for the line under the title
 * @param total which total: cost of the job, without its unit
 * @param houses in any order
 */
public record HouseTotals(Contrast contrast, String scope, String total, List<House> houses) implements Picture {

    /** A house's total, USD: 10, 50 and 90 % points, for each method. */
    public record House(String label, Pair<Spread> usd) {
        public House {
            Check.text("label", label);
        }
    }

    private static final int NAMED = 12;
    private static final int SIDE_BY_SIDE = 80;

    public HouseTotals {
        Check.text("total", total);
        houses = houses.stream()
                .sorted(Comparator.comparingDouble(h -> h.usd().first().middle()))
                .toList();
    }

    @Override
    public String name() {
        return "house-totals";
    }

    @Override
    public String title() {
        return "How far a house\u2019s total may range";
    }

    @Override
    public int heightPx() {
        return named() ? Frame.HEAD_PX + 44 * Math.max(2, houses.size()) + 44 : 420;
    }

    private boolean named() {
        return houses.size() <= NAMED;
    }

    @Override
    public String message() {
        if (houses.isEmpty()) {
            return "There are no houses to show.";
        }
        long apart = houses.stream()
                .filter(h -> h.usd().second().high() < h.usd().first().low())
                .count();
        return InWords.capital(Lettering.clean(total)) + " of " + Numbers.count(houses.size(), "house", "houses") + ": "
                + sentence(contrast.first()) + "; " + sentence(contrast.second())
                + ". In " + Numbers.plain(apart, 0)
                + " of them the whole range of " + contrast.second().inSentence() + " lies below that of "
                + contrast.first().inSentence() + ".";
    }

    private String sentence(Method method) {
        List<Spread> spreads = houses.stream()
                .map(h -> h.usd().of(contrast, method))
                .sorted(Comparator.comparingDouble(Spread::middle))
                .toList();
        Spread middle = spreads.get(spreads.size() / 2);
        return method.label() + " from " + Numbers.usd(spreads.get(0).middle()) + " to "
                + Numbers.usd(spreads.get(spreads.size() - 1).middle()) + ", for the middle house "
                + Numbers.usd(middle.middle()) + " (eight times in ten between " + Numbers.usd(middle.low()) + " and "
                + Numbers.usd(middle.high()) + ")";
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, scope);
        if (houses.isEmpty()) {
            Frame.empty(g, this);
        } else if (named()) {
            Frame.body(g, this, PairRows.dots(contrast, rows(), axis(axisLabel()), Numbers::usd));
        } else {
            Lettering.draw(g, "\u2191 " + axisLabel(), Theme.SMALL, Tone.MUTED, 0, Frame.HEAD_PX + 8, 0);
            Frame.body(g, this, 22, plot(shown()));
        }
    }

    private String axisLabel() {
        return Lettering.axis(total, ", USD: median, and the range of eight times in ten");
    }

    NumberAxis axis(String label) {
        return Axes.value(
                label,
                Axes.Format.USD,
                true,
                houses.stream()
                        .flatMap(h -> Stream.of(h.usd().first(), h.usd().second()))
                        .flatMapToDouble(s -> DoubleStream.of(s.low(), s.high())));
    }

    private List<PairRows.Ranges> rows() {
        return houses.stream().map(h -> new PairRows.Ranges(h.label(), h.usd())).toList();
    }

    /** All houses, or every n-th where they would run together. */
    List<House> shown() {
        int every = (houses.size() + SIDE_BY_SIDE - 1) / SIDE_BY_SIDE;
        List<House> shown = new ArrayList<>();
        for (int i = 0; i < houses.size(); i += every) {
            shown.add(houses.get(i));
        }
        return shown;
    }

    private XYPlot plot(List<House> shown) {
        XYIntervalSeriesCollection data = new XYIntervalSeriesCollection();
        XYErrorRenderer renderer = new XYErrorRenderer();
        renderer.setDrawXError(false);
        renderer.setCapLength(0);
        for (Method method : contrast.both()) {
            int index = data.getSeriesCount();
            XYIntervalSeries series = new XYIntervalSeries(method.label(), false, true);
            for (int i = 0; i < shown.size(); i++) {
                Spread usd = shown.get(i).usd().of(contrast, method);
                double x = i + (method == contrast.second() ? 0.7 : 0.3);
                series.add(x, x, x, usd.middle(), usd.low(), usd.high());
            }
            data.addSeries(series);
            renderer.setSeriesPaint(index, MethodStyle.of(method).color());
            renderer.setSeriesShape(index, Marks.small(MethodStyle.of(method)));
        }
        renderer.setErrorStroke(Theme.stroke(1.25f));
        XYPlot plot = RowAxis.upright(new XYPlot(data, order(shown.size()), axis(null), renderer));
        plot.setDomainGridlinesVisible(false);
        plot.addAnnotation(((Layer) (g, s) -> names(g, s, shown)).annotation());
        return plot;
    }

    private NumberAxis order(int number) {
        String which = number < houses.size()
                ? Numbers.plain(number, 0) + " of " + Numbers.count(houses.size(), "house", "houses")
                : Numbers.count(number, "house", "houses");
        NumberAxis axis =
                Axes.themed(which + ", ordered by the " + contrast.first().label() + " total \u2192");
        axis.setRange(-0.5, number + 0.5);
        axis.setTickLabelsVisible(false);
        return axis;
    }

    /** Names the methods where they stand clear of the data: the first over the upper end, the second under the middle. */
    private void names(Graphics2D g, Scales s, List<House> shown) {
        for (Method method : contrast.both()) {
            boolean above = method == contrast.first();
            int from = above ? shown.size() * 2 / 3 : shown.size() / 2;
            int to = Math.min(shown.size(), from + shown.size() / 4);
            DoubleStream ends = shown.subList(from, to).stream()
                    .flatMap(h -> Stream.of(h.usd().first(), h.usd().second()))
                    .mapToDouble(u -> above ? u.high() : -u.low());
            double end = ends.max().orElseThrow();
            double y = above ? s.yPx(end) - 8 : s.yPx(-end) + 16;
            Lettering.draw(
                    g,
                    method.label(),
                    Theme.STRONG,
                    MethodStyle.of(method).text(),
                    s.xPx((from + to) / 2.0),
                    Math.min(Math.max(y, s.area().getMinY() + 12), s.area().getMaxY() - 6),
                    0.5);
        }
    }
}
