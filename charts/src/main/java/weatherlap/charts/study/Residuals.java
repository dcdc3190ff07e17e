package weatherlap.charts.study;

import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.Comparator;
import java.util.List;
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
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.Scales;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.Check;

/**
 * What is left of the hours of jobs after the fit, by crew, temperature, storey: a strip of points for each level, with its
 * median. Strips that stand off zero say that the fit misses something.
 *
 * @param scope what is counted, for the line under the title
 * @param factors one for each thing the jobs are told apart by
 */
public record Residuals(String scope, List<Factor> factors) implements Picture {

    /** Jobs that make a median worth naming. */
    private static final int ENOUGH = 5;

    /** A heading and its levels. */
    public record Factor(String heading, List<Level> levels) {
        public Factor {
            Check.text("heading", heading);
            levels = List.copyOf(levels);
        }
    }

    /** Jobs of one level, and their actual less fitted hours as a fraction of the fitted. */
    public record Level(String label, List<Double> residuals) {
        public Level {
            Check.text("label", label);
            residuals = residuals.stream().sorted().toList();
            residuals.forEach(residual -> Check.finite("residual", residual));
        }

        /** The middle residual; 0 where there is none. */
        double median() {
            int n = residuals.size();
            return n == 0 ? 0 : (residuals.get((n - 1) / 2) + residuals.get(n / 2)) / 2;
        }
    }

    public Residuals {
        factors = List.copyOf(factors);
    }

    @Override
    public String name() {
        return "residuals";
    }

    @Override
    public String title() {
        return "What the fitted rates leave unexplained";
    }

    @Override
    public int heightPx() {
        return Frame.HEAD_PX + Grouped.heightPx(rows()) + 44;
    }

    private List<Level> levels() {
        return factors.stream()
                .flatMap(factor -> factor.levels().stream())
                .filter(level -> !level.residuals().isEmpty())
                .toList();
    }

    @Override
    public String message() {
        if (levels().isEmpty()) {
            return "There are no residuals to show.";
        }
        Standing farthest = farthest();
        return "Farthest from the fit stands " + Lettering.clean(farthest.heading()) + " "
                + Lettering.clean(farthest.level().label()) + " ("
                + Numbers.count(farthest.level().residuals().size(), "job", "jobs") + "), with a median of "
                + Numbers.signed(farthest.level().median() * 100, 0) + "% of the fitted hours.";
    }

    private record Standing(String heading, Level level) {
        boolean hasEnough() {
            return level.residuals().size() >= ENOUGH;
        }
    }

    /** The level whose median stands farthest from the fit, of those with enough jobs where there are any. */
    private Standing farthest() {
        List<Standing> all = factors.stream()
                .flatMap(factor -> factor.levels().stream().map(level -> new Standing(factor.heading(), level)))
                .filter(standing -> !standing.level().residuals().isEmpty())
                .toList();
        boolean some = all.stream().anyMatch(Standing::hasEnough);
        return all.stream()
                .filter(standing -> !some || standing.hasEnough())
                .max(Comparator.comparingDouble(
                        standing -> Math.abs(standing.level().median())))
                .orElseThrow();
    }

    private List<Grouped.Group> rows() {
        return factors.stream()
                .map(factor -> new Grouped.Group(
                        factor.heading(),
                        factor.levels().stream()
                                .map(level -> Lettering.clean(level.label()) + " ("
                                        + Numbers.plain(level.residuals().size(), 0) + ")")
                                .toList()))
                .toList();
    }

    NumberAxis axis() {
        return Axes.value(
                "actual less fitted hours, % of the fitted; line: median",
                Axes.Format.SIGNED_PERCENT, true, levels().stream().flatMapToDouble(l -> l.residuals().stream()
                        .mapToDouble(r -> r)));
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, scope);
        if (levels().isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        XYPlot plot = Grouped.plot(rows(), axis());
        XYSeriesCollection data = new XYSeriesCollection();
        XYSeries series = new XYSeries("residuals", false, true);
        eachLevel((level, row) -> {
            for (int i = 0; i < level.residuals().size(); i++) {
                series.add(row + (i % 3 - 1) * 0.18, level.residuals().get(i));
            }
        });
        data.addSeries(series);
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        renderer.setSeriesShape(0, new Ellipse2D.Double(-2, -2, 4, 4));
        renderer.setSeriesPaint(0, Tone.RULE.color());
        plot.setDataset(0, data);
        plot.setRenderer(0, renderer);
        plot.addAnnotation(((Layer) this::medians).annotation());
        Frame.body(g, this, plot);
    }

    private void medians(Graphics2D g, Scales s) {
        eachLevel((level, row) -> {
            if (!level.residuals().isEmpty()) {
                double x = s.xPx(level.median());
                g.setPaint(Tone.INK.color());
                g.setStroke(Theme.stroke(2.5f));
                g.draw(new Line2D.Double(x, s.yPx(row - 0.4), x, s.yPx(row + 0.4)));
                String text = Numbers.signed(level.median() * 100, 0) + "%";
                Lettering.draw(g, text, Theme.SMALL, Tone.INK, s.area().getMaxX() + 12, s.yPx(row) + 4, 0);
            }
        });
    }

    /** What is done with a level and its row. */
    @FunctionalInterface
    private interface ForLevel {
        void apply(Level level, double row);
    }

    private void eachLevel(ForLevel action) {
        List<Grouped.Group> rows = rows();
        for (int i = 0; i < factors.size(); i++) {
            for (int k = 0; k < factors.get(i).levels().size(); k++) {
                action.apply(factors.get(i).levels().get(k), Grouped.row(rows, i, k));
            }
        }
    }
}
