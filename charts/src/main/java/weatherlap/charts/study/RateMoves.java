package weatherlap.charts.study;

import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.Comparator;
import java.util.List;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Frame;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.Check;

/**
 * Rates before and after a fit, as labor of an average job, with the interval of the new one.
 *
 * @param scope what is counted, for the line under the title
 * @param rates in any order; those that move most money stand first, at most {@value #MOST}
 */
public record RateMoves(String scope, List<Rate> rates) implements Picture {
    /** Rates shown. */
    public static final int MOST = 18;

    private static final double LABEL_PX = 350;
    private static final double RIGHT_PX = 76;
    private static final double ROW_PX = 20;
    private static final double RADIUS_PX = 4;

    /** One rate, USD of an average job. */
    public record Rate(String label, double beforeUsd, double afterUsd, double lowUsd, double highUsd) {
        public Rate {
            Check.text("label", label);
            Check.notNegative("before", beforeUsd);
            Check.notNegative("after", afterUsd);
            Check.within("low", lowUsd, 0, afterUsd);
            Check.finite("high", highUsd);
        }

        double movedUsd() {
            return afterUsd - beforeUsd;
        }
    }

    public RateMoves {
        rates = rates.stream()
                .sorted(Comparator.comparingDouble(rate -> -Math.abs(rate.movedUsd())))
                .limit(MOST)
                .toList();
    }

    @Override
    public String name() {
        return "rate-moves";
    }

    @Override
    public String title() {
        return "Which rates moved the most money";
    }

    @Override
    public int heightPx() {
        return rates.isEmpty() ? Frame.EMPTY_PX : (int) (Frame.HEAD_PX + 36 + ROW_PX * rates.size());
    }

    @Override
    public String message() {
        if (rates.isEmpty()) {
            return "There are no rates to show.";
        }
        Rate most = rates.get(0);
        return "Most money moved with \u201c" + Lettering.clean(most.label()) + "\u201d: from "
                + Numbers.usd(most.beforeUsd()) + " to " + Numbers.usd(most.afterUsd())
                + " of labor in an average job.";
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, scope);
        if (rates.isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        Lettering.draw(
                g,
                "labor of an average job; ring: before, dot with its 90% interval: fitted; at the right what moved",
                Theme.SMALL,
                Tone.MUTED,
                0,
                Frame.HEAD_PX + 8,
                0);
        double most = rates.stream()
                .mapToDouble(rate -> Math.max(rate.highUsd(), rate.beforeUsd()))
                .max()
                .orElse(1);
        double scale = (Theme.WIDTH_PX - LABEL_PX - RIGHT_PX) / Math.max(most, Double.MIN_NORMAL);
        for (int i = 0; i < rates.size(); i++) {
            row(g, rates.get(i), Frame.HEAD_PX + 30 + ROW_PX * i, scale);
        }
    }

    private static void row(Graphics2D g, Rate rate, double y, double scale) {
        String label = Lettering.fit(rate.label(), Theme.SMALL, LABEL_PX - 14);
        Lettering.draw(g, label, Theme.SMALL, Tone.INK, LABEL_PX - 10, y + 4, 1);
        g.setPaint(Tone.RULE.color());
        g.setStroke(Theme.HAIRLINE);
        g.draw(new Line2D.Double(LABEL_PX, y, Theme.WIDTH_PX - RIGHT_PX, y));
        g.setPaint(Tone.INK.color());
        g.setStroke(Theme.stroke(2f));
        g.draw(new Line2D.Double(LABEL_PX + rate.lowUsd() * scale, y, LABEL_PX + rate.highUsd() * scale, y));
        g.setStroke(Theme.THIN);
        g.draw(mark(rate.beforeUsd() * scale, y));
        g.fill(mark(rate.afterUsd() * scale, y));
        Lettering.draw(g, Numbers.signedUsd(rate.movedUsd()), Theme.SMALL, Tone.INK, Theme.WIDTH_PX - 4, y + 4, 1);
    }

    private static Ellipse2D mark(double x, double y) {
        return new Ellipse2D.Double(LABEL_PX + x - RADIUS_PX, y - RADIUS_PX, 2 * RADIUS_PX, 2 * RADIUS_PX);
    }
}
