package weatherlap.charts.study;

import java.awt.Color;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Axes;
import weatherlap.charts.kit.Frame;
import weatherlap.charts.kit.Hatch;
import weatherlap.charts.kit.Layer;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.RowAxis;
import weatherlap.charts.kit.Scales;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.Check;
import weatherlap.sim.method.Contrast;

/**
 * What each assumption, moved alone from its low to its high value, does to the cost difference, the first method less the second.
 *
 * @param contrast the two methods
 * @param scope what is counted, for the line under the title
 * @param cost which cost, without its unit: cost over 15 years
 * @param baseUsd the difference with all assumptions at their likely values, USD
 * @param swings in any order; the picture shows the widest first
 */
public record Swings(Contrast contrast, String scope, String cost, double baseUsd, List<Swing> swings)
        implements Picture {

    /**
     * One assumption.
     *
     * @param label its name
     * @param lowValue its low value with unit, as text
     * @param highValue its high value
     * @param atLowUsd the difference with the low value, USD
     * @param atHighUsd the difference with the high value, USD
     */
    public record Swing(String label, String lowValue, String highValue, double atLowUsd, double atHighUsd) {
        public Swing {
            Check.text("label", label);
            Check.finite("difference at the low value", atLowUsd);
            Check.finite("difference at the high value", atHighUsd);
        }

        double width() {
            return Math.abs(atHighUsd - atLowUsd);
        }

        /** Whether the sign of the difference, and with it the cheaper method, changes on the way. */
        boolean turns() {
            return atLowUsd * atHighUsd < 0;
        }
    }

    private static final Color LOW = Theme.mix(Tone.MUTED.color(), Tone.PAPER.color(), 0.6);
    private static final int RIGHT_PX = 90;
    private static final double LABEL_PX = 88;

    public Swings {
        Check.text("cost", cost);
        Check.finite("base difference", baseUsd);
        swings = swings.stream()
                .sorted(Comparator.comparingDouble(Swing::width).reversed())
                .toList();
    }

    @Override
    public String name() {
        return "swings";
    }

    @Override
    public String title() {
        return "How far each assumption alone moves the cost difference";
    }

    @Override
    public int heightPx() {
        return Frame.HEAD_PX + 18 + 32 * Math.max(2, swings.size()) + 44;
    }

    @Override
    public String message() {
        if (swings.isEmpty()) {
            return "There are no assumptions to swing.";
        }
        Swing widest = swings.get(0);
        List<String> turning = swings.stream()
                .filter(Swing::turns)
                .map(swing -> Lettering.clean(swing.label()))
                .toList();
        return "With all assumptions at their likely values " + contrast.first().inSentence() + " differs from "
                + contrast.second().inSentence() + " by "
                + Numbers.signedUsd(baseUsd) + ". " + InWords.capital(Lettering.clean(widest.label()))
                + " moves that most, from " + Numbers.signedUsd(widest.atLowUsd()) + " to "
                + Numbers.signedUsd(widest.atHighUsd()) + ". "
                + (turning.isEmpty()
                        ? "No assumption alone changes which method costs less."
                        : "Which method costs less changes with " + InWords.list(turning) + ".");
    }

    NumberAxis axis() {
        return Axes.value(
                Lettering.axis(cost, ", " + contrast.less() + ", USD"),
                Axes.Format.SIGNED_USD,
                true,
                DoubleStream.concat(
                        DoubleStream.of(baseUsd),
                        swings.stream().flatMapToDouble(s -> DoubleStream.of(s.atLowUsd(), s.atHighUsd()))));
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, "light: at its low value; dark: at its high value; " + scope);
        if (swings.isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        XYPlot plot = RowAxis.plot(swings.stream().map(Swing::label).toList(), axis(), Theme.WIDTH_PX, RIGHT_PX);
        List<RowAxis.Bar> low = new ArrayList<>();
        List<RowAxis.Bar> high = new ArrayList<>();
        for (int i = 0; i < swings.size(); i++) {
            low.add(new RowAxis.Bar(i + 0.22, i + 0.78, baseUsd, swings.get(i).atLowUsd()));
            high.add(new RowAxis.Bar(i + 0.22, i + 0.78, baseUsd, swings.get(i).atHighUsd()));
        }
        RowAxis.add(plot, RowAxis.bars(low, "low"), Hatch.bars(LOW, false));
        RowAxis.add(plot, RowAxis.bars(high, "high"), Hatch.bars(Tone.MUTED.color(), false));
        plot.addAnnotation(((Layer) this::labels).annotation());
        Frame.body(g, this, 18, plot);
    }

    /** The value of the assumption at each end of its bar, and the likely difference over the plot. */
    private void labels(Graphics2D g, Scales s) {
        Lettering.draw(
                g,
                "all likely: " + Numbers.signedUsd(baseUsd),
                Theme.SMALL_STRONG,
                Tone.INK,
                s.xPx(baseUsd),
                s.area().getMinY() - 6,
                0.5);
        for (int i = 0; i < swings.size(); i++) {
            Swing swing = swings.get(i);
            boolean lowIsLeft = swing.atLowUsd() <= swing.atHighUsd();
            double left = s.xPx(Math.min(baseUsd, Math.min(swing.atLowUsd(), swing.atHighUsd())));
            double right = s.xPx(Math.max(baseUsd, Math.max(swing.atLowUsd(), swing.atHighUsd())));
            double y = s.yPx(i + 0.5) + 4;
            end(
                    g,
                    lowIsLeft ? swing.lowValue() : swing.highValue(),
                    left - 5,
                    y,
                    1,
                    left - s.area().getMinX() - 8);
            end(g, lowIsLeft ? swing.highValue() : swing.lowValue(), right + 5, y, 0, LABEL_PX);
        }
    }

    private static void end(Graphics2D g, String value, double x, double y, double align, double room) {
        String text = Lettering.fit(value, Theme.SMALL, Math.min(room, LABEL_PX));
        if (!text.equals(Lettering.CUT)) {
            Lettering.draw(g, text, Theme.SMALL, Tone.MUTED, x, y, align);
        }
    }
}
