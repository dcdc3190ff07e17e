package weatherlap.charts.report;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeriesCollection;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Axes;
import weatherlap.charts.kit.Frame;
import weatherlap.charts.kit.Layer;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.MethodStyle;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.Placement;
import weatherlap.charts.kit.RowAxis;
import weatherlap.charts.kit.Scales;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.Check;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;

/**
 * What the family gains by a method against what the shop gains by it, a dot a house.
 *
 * @param contrast the first is gained by to the right and up, the second to the left and down
 * @param years over which the family saves, in words
 * @param houses one dot each
 * @param widthPx of the picture
 * @param heightPx of the picture
 */
public record BothSides(Contrast contrast, String years, List<House> houses, int widthPx, int heightPx)
        implements Picture {
    private static final double LABEL_PX = 150;
    private static final int KEY_PX = 28;
    private static final int TICK_PX = 110;

    /** An axis reaches past zero by this share of its longer side, so that every part of the picture has room for its words. */
    private static final double PAST_ZERO = 0.18;

    /**
     * One house.
     *
     * @param label names it where there is room
     * @param familySavesUsd with the first method rather than the second, over the years
     * @param shopEarnsUsd a crew day, by the first less by the second
     * @param marked whether to name it
     */
    public record House(String label, double familySavesUsd, double shopEarnsUsd, boolean marked) {
        public House {
            Check.text("label", label);
            Check.finite("what the family saves", familySavesUsd);
            Check.finite("what the shop earns", shopEarnsUsd);
        }
    }

    public BothSides {
        houses = List.copyOf(houses);
    }

    @Override
    public String name() {
        return "both-sides";
    }

    @Override
    public String title() {
        return "Who gains? A dot for each house";
    }

    @Override
    public String message() {
        if (houses.isEmpty()) {
            return "There are no houses to compare.";
        }
        return Stream.of(
                        both(contrast.first(), h -> gains(h, House::familySavesUsd) && gains(h, House::shopEarnsUsd)),
                        both(
                                contrast.second(),
                                h -> !gains(h, House::familySavesUsd) && !gains(h, House::shopEarnsUsd)),
                        apart(contrast.first(), h -> gains(h, House::familySavesUsd) && !gains(h, House::shopEarnsUsd)),
                        apart(
                                contrast.second(),
                                h -> !gains(h, House::familySavesUsd) && gains(h, House::shopEarnsUsd)))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" "));
    }

    private Optional<String> both(Method method, Predicate<House> which) {
        return at(which).map(at -> at + ", family and shop both gain with " + method.many() + ".");
    }

    private Optional<String> apart(Method family, Predicate<House> which) {
        return at(which)
                .map(at -> at + ", the family gains with " + family.many() + ", but the shop with "
                        + contrast.other(family).many() + ".");
    }

    private Optional<String> at(Predicate<House> which) {
        long count = houses.stream().filter(which).count();
        return count == 0
                ? Optional.empty()
                : Optional.of("At " + (count == houses.size() ? "all " : "") + Numbers.count(count, "house", "houses"));
    }

    private static boolean gains(House house, ToDoubleFunction<House> side) {
        return side.applyAsDouble(house) > 0;
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, "right: the family gains; up: the shop gains");
        if (houses.isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        String up =
                "\u2191 a crew day earns the shop more with " + contrast.first().many();
        Lettering.draw(g, Lettering.fit(up, Theme.SMALL, widthPx), Theme.SMALL, Tone.MUTED, 0, Frame.HEAD_PX + 12, 0);
        Frame.body(g, this, KEY_PX, plot(this::dots));
    }

    /** Where the dots lie, in their order: shares of the width and of the height of the picture. */
    public List<Point2D> spots() {
        List<Point2D> spots = new ArrayList<>();
        Graphics2D g = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        Frame.body(
                g,
                this,
                KEY_PX,
                plot((graphics, scales) -> houses.forEach(house -> {
                    Point2D at = at(house, scales);
                    spots.add(new Point2D.Double(at.getX() / widthPx, at.getY() / heightPx));
                })));
        g.dispose();
        return spots;
    }

    NumberAxis familyAxis() {
        String label = "family saves with " + contrast.first().many() + " over " + years + " \u2192";
        return Axes.value(
                Lettering.fit(label, Theme.SMALL, widthPx - 70.0),
                Axes.Format.SIGNED_USD,
                true,
                widthPx / TICK_PX,
                roomy(houses.stream().mapToDouble(House::familySavesUsd)));
    }

    NumberAxis shopAxis() {
        return Axes.value(
                null, Axes.Format.SIGNED_USD, true, roomy(houses.stream().mapToDouble(House::shopEarnsUsd)));
    }

    private static DoubleStream roomy(DoubleStream values) {
        double[] all = values.toArray();
        double past = PAST_ZERO * DoubleStream.of(all).map(Math::abs).max().orElse(1);
        return DoubleStream.concat(DoubleStream.of(all), DoubleStream.of(-past, past));
    }

    private XYPlot plot(Layer layer) {
        XYPlot plot = RowAxis.upright(new XYPlot(
                new XYSeriesCollection(), familyAxis(), shopAxis(), new XYLineAndShapeRenderer(false, false)));
        plot.setDomainZeroBaselineVisible(true);
        plot.setDomainZeroBaselinePaint(Tone.RULE.color());
        plot.addAnnotation(layer.annotation());
        return plot;
    }

    private void dots(Graphics2D g, Scales s) {
        Placement placement = new Placement(s.area());
        houses.forEach(h -> placement.keepFree(at(h, s)));
        quadrants().forEach(quadrant -> quadrant.draw(g, s, placement));
        for (House house : houses) {
            Method family = gains(house, House::familySavesUsd) ? contrast.first() : contrast.second();
            Point2D at = at(house, s);
            g.setPaint(MethodStyle.of(family).color());
            g.fill(AffineTransform.getTranslateInstance(at.getX(), at.getY())
                    .createTransformedShape(MethodStyle.of(family).mark()));
            g.setPaint(Color.WHITE);
            g.setStroke(Theme.HAIRLINE);
            g.draw(new Ellipse2D.Double(at.getX() - 4.5, at.getY() - 4.5, 9, 9));
        }
        houses.stream().filter(House::marked).forEach(house -> {
            String text = Lettering.fit(house.label(), Theme.SMALL, LABEL_PX);
            placement
                    .place(text, Theme.SMALL, at(house, s))
                    .ifPresent(box -> Placement.draw(g, text, Theme.SMALL, Tone.INK, box));
        });
    }

    private List<Quadrant> quadrants() {
        String first = contrast.first().many();
        String second = contrast.second().many();
        return List.of(
                new Quadrant(
                        true,
                        true,
                        InWords.capital(first) + ": both gain",
                        MethodStyle.of(contrast.first()).text()),
                new Quadrant(
                        false,
                        false,
                        InWords.capital(second) + ": both gain",
                        MethodStyle.of(contrast.second()).text()),
                new Quadrant(true, false, "Family gains with " + first + ", shop with " + second, Tone.INK),
                new Quadrant(false, true, "Family gains with " + second + ", shop with " + first, Tone.INK));
    }

    private static Point2D at(House house, Scales s) {
        return new Point2D.Double(s.xPx(house.familySavesUsd()), s.yPx(house.shopEarnsUsd()));
    }
}
