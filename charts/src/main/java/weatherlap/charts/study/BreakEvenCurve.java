package weatherlap.charts.study;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
 * What both methods cost while one assumption runs over a range, and where the preferred method changes.
 *
 * @param contrast the two methods
 * @param scope what is counted, for the line under the title
 * @param varied the assumption, without its unit
 * @param unit its unit; may be empty
 * @param cost which cost, without its unit
 * @param points in any order
 * @param crossing where the costs are equal, with the interval that holds it nine times in ten; empty where they do not cross
 *     in the range
 * @param now the value that the assumption has; marked where the range holds it
 */
public record BreakEvenCurve(
        Contrast contrast,
        String scope,
        String varied,
        String unit,
        String cost,
        List<Point> points,
        Optional<Spread> crossing,
        double now)
        implements Picture {

    /** A value of the assumption and what the methods cost with it, USD. */
    public record Point(double value, Pair<Double> usd) {
        public Point {
            Check.finite("value", value);
            Check.finite("first USD", usd.first());
            Check.finite("second USD", usd.second());
        }
    }

    public BreakEvenCurve {
        Check.text("varied", varied);
        Check.text("cost", cost);
        Check.finite("value now", now);
        points =
                points.stream().sorted(Comparator.comparingDouble(Point::value)).toList();
    }

    @Override
    public String name() {
        return "break-even";
    }

    @Override
    public String title() {
        return "Where the preferred method changes";
    }

    @Override
    public int heightPx() {
        return points.isEmpty() ? Frame.EMPTY_PX : 400;
    }

    @Override
    public String message() {
        if (points.isEmpty()) {
            return "There is no range to show.";
        }
        Point first = points.get(0);
        Point last = points.get(points.size() - 1);
        String range = " from " + number(first.value()) + " to " + value(last.value());
        String change = crossing.map(at -> "With " + Lettering.clean(varied) + " below " + value(at.middle()) + " "
                        + cheaper(first)
                        + " costs less, above it " + cheaper(last) + " (nine times in ten the change lies between "
                        + number(at.low()) + " and " + value(at.high()) + ").")
                .orElseGet(() -> "With " + Lettering.clean(varied) + range + ", " + cheaper(first)
                        + " costs less throughout: the costs do not cross.");
        return change + " It is now " + value(now) + ".";
    }

    private String cheaper(Point point) {
        return (point.usd().first() <= point.usd().second() ? contrast.first() : contrast.second()).inSentence();
    }

    private String value(double value) {
        return number(value) + (unit.isBlank() ? "" : " " + Lettering.clean(unit));
    }

    /** Three significant figures. */
    private static String number(double value) {
        double size = Math.abs(value);
        int decimals = size >= 100 || size == 0 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 3;
        return Numbers.plain(value, decimals);
    }

    NumberAxis variedAxis() {
        return Axes.value(
                Lettering.axis(varied, unit.isBlank() ? "" : ", " + Lettering.clean(unit)),
                Axes.Format.PLAIN,
                false,
                points.stream().mapToDouble(Point::value));
    }

    NumberAxis costAxis() {
        return Axes.value(
                null,
                Axes.Format.USD,
                false,
                points.stream()
                        .flatMapToDouble(
                                p -> DoubleStream.of(p.usd().first(), p.usd().second())));
    }

    XYSeries series(Method method) {
        XYSeries series = new XYSeries(method.label(), false, true);
        points.forEach(p -> series.add(p.value(), (double) p.usd().of(contrast, method)));
        return series;
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, scope);
        if (points.isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        Lettering.draw(g, "\u2191 " + Lettering.axis(cost, ", USD"), Theme.SMALL, Tone.MUTED, 0, Frame.HEAD_PX + 8, 0);
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, points.size() == 1);
        renderer.setDrawSeriesLineAsPath(true);
        for (Method method : contrast.both()) {
            renderer.setSeriesPaint(
                    data.getSeriesCount(), MethodStyle.of(method).color());
            renderer.setSeriesStroke(
                    data.getSeriesCount(), MethodStyle.of(method).line());
            renderer.setSeriesShape(
                    data.getSeriesCount(), MethodStyle.of(method).mark());
            data.addSeries(series(method));
        }
        XYPlot plot = RowAxis.upright(new XYPlot(data, variedAxis(), costAxis(), renderer));
        renderer.addAnnotation(((Layer) this::band).annotation(), org.jfree.chart.ui.Layer.BACKGROUND);
        renderer.addAnnotation(((Layer) this::mark).annotation(), org.jfree.chart.ui.Layer.BACKGROUND);
        plot.addAnnotation(((Layer) this::labels).annotation());
        Frame.body(g, this, 36, plot);
    }

    /** The interval of the crossing, behind the lines. */
    private void band(Graphics2D g, Scales s) {
        crossing.ifPresent(at -> {
            double left = clamp(s.xPx(at.low()), s);
            double right = clamp(s.xPx(at.high()), s);
            g.setPaint(Tone.FAINT.color());
            g.fill(new Rectangle2D.Double(
                    left, s.area().getMinY(), right - left, s.area().getHeight()));
            g.setPaint(Tone.INK.color());
            g.setStroke(new BasicStroke(1f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
            double x = clamp(s.xPx(at.middle()), s);
            g.draw(new Line2D.Double(x, s.area().getMinY() - 4, x, s.area().getMaxY()));
        });
    }

    /** The value that the assumption has, behind the lines. */
    private void mark(Graphics2D g, Scales s) {
        double x = s.xPx(now);
        if (x < s.area().getMinX() || x > s.area().getMaxX()) {
            return;
        }
        g.setPaint(Tone.MUTED.color());
        g.setStroke(Theme.stroke(1.5f, 4, 3));
        g.draw(new Line2D.Double(x, s.area().getMinY(), x, s.area().getMaxY()));
        boolean right = x > s.area().getCenterX();
        String text = Lettering.fit("now " + value(now), Theme.SMALL, 300);
        Lettering.draw(g, text, Theme.SMALL, Tone.MUTED, x + (right ? -5 : 5), freeRowPx(s), right ? 1 : 0);
    }

    /** A height at which no line is named: of three, the names take two at most. */
    private double freeRowPx(Scales s) {
        double[] taken = nameRowsPx(s, named(s));
        double[] rows = {
            s.area().getMaxY() - 6, s.area().getMinY() + 14, s.area().getCenterY()
        };
        return Arrays.stream(rows)
                .filter(row -> Arrays.stream(taken).allMatch(name -> Math.abs(name - row) > 18))
                .findFirst()
                .orElse(rows[0]);
    }

    private static double clamp(double x, Scales s) {
        return Math.max(s.area().getMinX(), Math.min(s.area().getMaxX(), x));
    }

    private void labels(Graphics2D g, Scales s) {
        crossing.ifPresent(at -> {
            String text = "equal at " + value(at.middle()) + " (" + number(at.low()) + " to " + value(at.high()) + ")";
            double half = Lettering.width(Lettering.fit(text, Theme.SMALL_STRONG, 500), Theme.SMALL_STRONG) / 2;
            double x = Math.max(half, Math.min(widthPx() - half, clamp(s.xPx(at.middle()), s)));
            String fitted = Lettering.fit(text, Theme.SMALL_STRONG, 500);
            Lettering.draw(g, fitted, Theme.SMALL_STRONG, Tone.INK, x, s.area().getMinY() - 8, 0.5);
        });
        names(g, s, named(s));
    }

    /** The end at which the lines lie further apart. */
    private Point named(Scales s) {
        Point first = points.get(0);
        Point last = points.get(points.size() - 1);
        return gapPx(first, s) > gapPx(last, s) ? first : last;
    }

    /** Names both lines at a point: the upper one over it, the lower one under it. */
    private void names(Graphics2D g, Scales s, Point at) {
        boolean right = s.xPx(at.value()) > s.area().getCenterX();
        double x = s.xPx(at.value()) + (right ? -8 : 8);
        double[] rows = nameRowsPx(s, at);
        boolean firstAbove = s.yPx(at.usd().first()) <= s.yPx(at.usd().second());
        for (Method method : contrast.both()) {
            boolean above = firstAbove == (method == contrast.first());
            Lettering.draw(
                    g,
                    method.label(),
                    Theme.STRONG,
                    MethodStyle.of(method).text(),
                    x,
                    rows[above ? 0 : 1],
                    right ? 1 : 0);
        }
    }

    /** Heights of the two names, the upper one first. */
    private static double[] nameRowsPx(Scales s, Point at) {
        double first = s.yPx(at.usd().first());
        double second = s.yPx(at.usd().second());
        double low = Math.min(s.area().getMaxY() - 5, Math.max(first, second) + 20);
        double high = Math.min(low - 16, Math.max(s.area().getMinY() + 12, Math.min(first, second) - 10));
        return new double[] {high, low};
    }

    private static double gapPx(Point point, Scales s) {
        return Math.abs(s.yPx(point.usd().first()) - s.yPx(point.usd().second()));
    }
}
