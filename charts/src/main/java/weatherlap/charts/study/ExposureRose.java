package weatherlap.charts.study;

import java.awt.Graphics2D;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.jfree.chart.axis.NumberAxis;
import weatherlap.analysis.words.Compass;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Axes;
import weatherlap.charts.kit.Frame;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.MethodStyle;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.Rose;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.Check;

/**
 * Driving rain by the bearing that a wall faces, by two indices.
 *
 * @param scope which place and years
 * @param firstIndex name of the first index
 * @param secondIndex name of the second
 * @param rays one for each bearing
 */
public record ExposureRose(String scope, String firstIndex, String secondIndex, List<Ray> rays) implements Picture {

    /**
     * Driving rain on a wall.
     *
     * @param bearingDeg outward normal, degrees clockwise from north, 0 to below 360
     * @param firstLitresPerM2Year by the first index, L/m² a year
     * @param secondLitresPerM2Year by the second
     */
    public record Ray(double bearingDeg, double firstLitresPerM2Year, double secondLitresPerM2Year) {
        public Ray {
            Check.within("bearing", bearingDeg, 0, Math.nextDown(360.0));
            Check.notNegative("first index", firstLitresPerM2Year);
            Check.notNegative("second index", secondLitresPerM2Year);
        }
    }

    private static final String UNIT = " L/m\u00b2 a year";

    public ExposureRose {
        Check.text("first index", firstIndex);
        Check.text("second index", secondIndex);
        rays = List.copyOf(rays);
    }

    @Override
    public String name() {
        return "exposure-rose";
    }

    @Override
    public String title() {
        return "Driving rain by the way a wall faces";
    }

    @Override
    public int heightPx() {
        return rays.isEmpty() ? Frame.EMPTY_PX : Rose.HEIGHT_PX;
    }

    @Override
    public String message() {
        if (rays.isEmpty()) {
            return "There is no driving rain to show.";
        }
        Rose.Curve first = first();
        Rose.Curve second = second();
        return "By the " + Lettering.clean(firstIndex) + ", walls that face "
                + Compass.word(first.highest().bearingDeg()) + " take the most driving rain, "
                + text(first.highest().value()) + UNIT + ", and those that face "
                + Compass.word(first.lowest().bearingDeg()) + " the least, "
                + text(first.lowest().value()) + "; by the " + Lettering.clean(secondIndex) + " the most is "
                + text(second.highest().value()) + " ("
                + Compass.word(second.highest().bearingDeg()) + ").";
    }

    private static String text(double litres) {
        return Numbers.plain(litres, 0);
    }

    private Rose.Curve first() {
        return new Rose.Curve(
                firstIndex, MethodStyle.FULL_FLANGE, Tone.INK.color(), Tone.INK, rays(Ray::firstLitresPerM2Year));
    }

    private Rose.Curve second() {
        return new Rose.Curve(
                secondIndex, MethodStyle.INSERT, Tone.RULE.color(), Tone.MUTED, rays(Ray::secondLitresPerM2Year));
    }

    private List<Rose.Ray> rays(ToDoubleFunction<Ray> value) {
        return rays.stream()
                .map(ray -> new Rose.Ray(ray.bearingDeg(), value.applyAsDouble(ray)))
                .toList();
    }

    NumberAxis axis() {
        return Axes.value(
                null,
                Axes.Format.PLAIN,
                true,
                rays.stream()
                        .flatMapToDouble(r -> DoubleStream.of(r.firstLitresPerM2Year(), r.secondLitresPerM2Year())));
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, "L/m\u00b2 a year; " + scope);
        if (rays.isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        Rose.draw(g, List.of(first(), second()), axis(), ExposureRose::text, UNIT);
    }
}
