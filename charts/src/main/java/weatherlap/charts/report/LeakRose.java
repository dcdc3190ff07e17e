package weatherlap.charts.report;

import java.awt.Graphics2D;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import org.jfree.chart.axis.NumberAxis;
import weatherlap.analysis.words.Compass;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Axes;
import weatherlap.charts.kit.Frame;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.MethodStyle;
import weatherlap.charts.kit.Pair;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.Rose;
import weatherlap.sim.Check;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;

/**
 * Leak risk by the bearing that a wall faces, for both methods.
 *
 * @param contrast the two methods
 * @param scope what is counted, for the line under the title
 * @param risk what the numbers are, with their unit: chance of a leak within 15 years
 * @param rays one for each bearing that has walls
 */
public record LeakRose(Contrast contrast, String scope, String risk, List<Ray> rays) implements Picture {

    /**
     * Leak risk of the walls that face one way.
     *
     * @param bearingDeg outward normal, degrees clockwise from north, 0 to below 360
     * @param probability chance of a leak, 0 to 1, for each method
     */
    public record Ray(double bearingDeg, Pair<Double> probability) {
        public Ray {
            Check.within("bearing", bearingDeg, 0, Math.nextDown(360.0));
            Check.fraction("first probability", probability.first());
            Check.fraction("second probability", probability.second());
        }
    }

    public LeakRose {
        Check.text("risk", risk);
        rays = List.copyOf(rays);
    }

    @Override
    public String name() {
        return "leak-rose";
    }

    @Override
    public String title() {
        return "Leak risk by the way a wall faces";
    }

    @Override
    public int heightPx() {
        return rays.isEmpty() ? Frame.EMPTY_PX : Rose.HEIGHT_PX;
    }

    @Override
    public String message() {
        if (rays.isEmpty()) {
            return "There are no walls to compare.";
        }
        return InWords.capital(Lettering.clean(risk)) + ": " + sentence(contrast.first()) + "; "
                + sentence(contrast.second()) + ".";
    }

    private String sentence(Method method) {
        Rose.Curve curve = curve(method);
        return method.label() + " from " + text(curve.lowest().value()) + " on walls that face "
                + Compass.word(curve.lowest().bearingDeg()) + " to "
                + text(curve.highest().value()) + " facing "
                + Compass.word(curve.highest().bearingDeg());
    }

    private static String text(double probability) {
        return Numbers.percent(probability, 1);
    }

    Rose.Curve curve(Method method) {
        Function<Ray, Rose.Ray> ray =
                r -> new Rose.Ray(r.bearingDeg(), r.probability().of(contrast, method));
        return new Rose.Curve(
                method.label(),
                MethodStyle.of(method),
                MethodStyle.of(method).color(),
                MethodStyle.of(method).text(),
                rays.stream().map(ray).toList());
    }

    NumberAxis axis() {
        return Axes.value(
                null,
                Axes.Format.PERCENT,
                true,
                rays.stream()
                        .flatMapToDouble(r -> DoubleStream.of(
                                r.probability().first(), r.probability().second())));
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, Lettering.clean(risk) + ", %; " + scope);
        if (rays.isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        List<Rose.Curve> curves = contrast.both().stream().map(this::curve).toList();
        Rose.draw(g, curves, axis(), LeakRose::text, "");
    }
}
