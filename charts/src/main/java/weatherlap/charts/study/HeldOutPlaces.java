package weatherlap.charts.study;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Frame;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.Check;

/**
 * Where the hours of jobs fell within what was foreseen of them without them, in tenths: the probability integral. Where the foreseen
 * spread is right, each tenth holds a tenth of the jobs.
 *
 * @param scope what is counted, for the line under the title
 * @param places of the jobs, 0 to 1: the chance that was given to fewer hours
 * @see "Dawid 1984, Journal of the Royal Statistical Society A 147(2) (the probability integral of forecasts); from memory"
 */
public record HeldOutPlaces(String scope, List<Double> places) implements Picture {
    private static final int TENTHS = 10;
    private static final double PLOT_PX = 190;
    private static final double LEFT_PX = 40;

    public HeldOutPlaces {
        places.forEach(place -> Check.within("place", place, 0, 1));
        places = List.copyOf(places);
    }

    @Override
    public String name() {
        return "held-out-places";
    }

    @Override
    public String title() {
        return "Did the fit predict unseen jobs as surely as it says?";
    }

    @Override
    public int heightPx() {
        return places.isEmpty() ? Frame.EMPTY_PX : (int) (Frame.HEAD_PX + 30 + PLOT_PX + 44);
    }

    @Override
    public String message() {
        if (places.isEmpty()) {
            return "There are no jobs to show.";
        }
        double within = places.stream().filter(p -> p >= 0.05 && p <= 0.95).count() / (double) places.size();
        return "Of " + Numbers.count(places.size(), "job", "jobs") + " predicted without them, "
                + Numbers.percent(within, 0)
                + " took hours within the range that was given 90%. Even columns say that the range is"
                + " right; high ends, that jobs vary more than the fit says; a high middle, less.";
    }

    int[] counts() {
        int[] counts = new int[TENTHS];
        places.forEach(place -> counts[Math.min(TENTHS - 1, (int) (TENTHS * place))]++);
        return counts;
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, scope);
        if (places.isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        int[] counts = counts();
        double even = places.size() / (double) TENTHS;
        double most = even;
        for (int count : counts) {
            most = Math.max(most, count);
        }
        double foot = Frame.HEAD_PX + 30 + PLOT_PX;
        double width = (Theme.WIDTH_PX - LEFT_PX) / TENTHS;
        for (int t = 0; t < TENTHS; t++) {
            double height = PLOT_PX * counts[t] / most;
            double x = LEFT_PX + t * width;
            g.setPaint(Tone.RULE.color());
            g.fill(new Rectangle2D.Double(x + 2, foot - height, width - 4, height));
            Lettering.draw(
                    g, Numbers.plain(counts[t], 0), Theme.SMALL, Tone.MUTED, x + width / 2, foot - height - 4, 0.5);
            Lettering.draw(
                    g, 10 * t + " to " + 10 * (t + 1) + "%", Theme.SMALL, Tone.MUTED, x + width / 2, foot + 14, 0.5);
        }
        double line = foot - PLOT_PX * even / most;
        g.setPaint(Tone.INK.color());
        g.setStroke(Theme.THIN);
        g.draw(new Line2D.Double(LEFT_PX, line, Theme.WIDTH_PX, line));
        Lettering.draw(g, "even", Theme.SMALL, Tone.INK, LEFT_PX - 6, line + 4, 1);
        Lettering.draw(
                g,
                "chance that the forecast gave to fewer hours than the job took; bars: jobs",
                Theme.SMALL,
                Tone.MUTED,
                LEFT_PX,
                foot + 34,
                0);
    }
}
