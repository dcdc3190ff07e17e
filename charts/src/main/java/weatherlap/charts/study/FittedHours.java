package weatherlap.charts.study;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
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
import weatherlap.charts.kit.Marks;
import weatherlap.charts.kit.MethodStyle;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.RowAxis;
import weatherlap.charts.kit.Scales;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.Check;

/**
 * Hours that jobs took against the hours that the fitted rates give them.
 *
 * @param scope what is counted, for the line under the title
 * @param jobs one point each
 */
public record FittedHours(String scope, List<Job> jobs) implements Picture {

    /**
     * A job's method, its fitted and its actual person-hours.
     *
     * @param setAside its key where the fit left it out as too far from the others, which is then shown
     */
    public record Job(MethodStyle method, double fittedHours, double actualHours, Optional<String> setAside) {
        /** A job that the fit was made from. */
        public Job(MethodStyle method, double fittedHours, double actualHours) {
            this(method, fittedHours, actualHours, Optional.empty());
        }

        public Job {
            Check.notNegative("fitted hours", fittedHours);
            Check.notNegative("actual hours", actualHours);
        }
    }

    private static final double WITHIN = 0.2;
    /** Jobs set aside that are named. */
    private static final int NAMED = 6;

    public FittedHours {
        jobs = List.copyOf(jobs);
    }

    @Override
    public String name() {
        return "fitted-hours";
    }

    @Override
    public String title() {
        return "Do the fitted rates give the hours that jobs took?";
    }

    @Override
    public int heightPx() {
        return jobs.isEmpty() ? Frame.EMPTY_PX : 500;
    }

    @Override
    public String message() {
        if (jobs.isEmpty()) {
            return "There are no jobs to show.";
        }
        double bias = jobs.stream()
                .mapToDouble(j -> j.actualHours() - j.fittedHours())
                .average()
                .orElseThrow();
        long near = jobs.stream()
                .filter(j -> Math.abs(j.actualHours() - j.fittedHours()) <= WITHIN * j.fittedHours())
                .count();
        return "Of " + Numbers.count(jobs.size(), "job", "jobs") + ", " + Numbers.plain(near, 0) + " ("
                + Numbers.percent(near / (double) jobs.size(), 0) + ") took within "
                + Numbers.percent(WITHIN, 0) + " of the fitted hours; on average they took "
                + Numbers.signed(bias, 1) + " person-hours against the fit."
                + (setAside().isEmpty()
                        ? ""
                        : " Set aside: "
                                + Numbers.count(setAside().size(), "job", "jobs")
                                + ", ringed and named where there is room.");
    }

    private List<Job> setAside() {
        return jobs.stream().filter(job -> job.setAside().isPresent()).toList();
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, scope);
        if (jobs.isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        Lettering.draw(g, "\u2191 actual person-hours", Theme.SMALL, Tone.MUTED, 0, Frame.HEAD_PX + 8, 0);
        key(g);
        Frame.body(g, this, 26, plot());
    }

    private void key(Graphics2D g) {
        double x = 220;
        for (MethodStyle method : MethodStyle.values()) {
            double y = Frame.HEAD_PX + 8.0;
            g.setPaint(method.color());
            g.fill(AffineTransform.getTranslateInstance(x, y - 4).createTransformedShape(method.mark()));
            Lettering.draw(g, method.label(), Theme.SMALL_STRONG, method.text(), x + 10, y, 0);
            x += 120;
        }
    }

    NumberAxis axis(String label) {
        return Axes.value(
                label,
                Axes.Format.PLAIN,
                true,
                jobs.stream().flatMapToDouble(j -> DoubleStream.of(j.fittedHours(), j.actualHours())));
    }

    private XYPlot plot() {
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        renderer.setUseFillPaint(true);
        renderer.setUseOutlinePaint(true);
        for (MethodStyle method : MethodStyle.values()) {
            int index = data.getSeriesCount();
            XYSeries series = new XYSeries(method.label(), false, true);
            jobs.stream()
                    .filter(job -> job.method() == method)
                    .forEach(job -> series.add(job.fittedHours(), job.actualHours()));
            data.addSeries(series);
            renderer.setSeriesShape(index, Marks.medium(method));
            renderer.setSeriesFillPaint(index, method.color());
            renderer.setSeriesOutlinePaint(index, Color.WHITE);
            renderer.setSeriesOutlineStroke(index, Theme.HAIRLINE);
        }
        XYPlot plot = RowAxis.upright(new XYPlot(data, axis("fitted person-hours"), axis(null), renderer));
        plot.addAnnotation(((Layer) this::rings).annotation());
        renderer.addAnnotation(((Layer) FittedHours::equal).annotation(), org.jfree.chart.ui.Layer.BACKGROUND);
        return plot;
    }

    /** Jobs that were set aside; the first few by name, those that took most hours first. */
    private void rings(Graphics2D g, Scales s) {
        List<Job> all = setAside().stream()
                .sorted(Comparator.comparingDouble(Job::actualHours).reversed())
                .toList();
        for (int i = 0; i < all.size(); i++) {
            Job job = all.get(i);
            double x = s.xPx(job.fittedHours());
            double y = s.yPx(job.actualHours());
            g.setPaint(Tone.INK.color());
            g.setStroke(Theme.THIN);
            g.draw(new Ellipse2D.Double(x - 8, y - 8, 16, 16));
            if (i < NAMED) {
                String name = Lettering.fit(job.setAside().orElseThrow(), Theme.SMALL, 120);
                // the corners away from the line are free
                boolean left = job.actualHours() > job.fittedHours()
                        && x - 12 - Lettering.width(name, Theme.SMALL)
                                > s.area().getMinX();
                Lettering.draw(g, name, Theme.SMALL, Tone.INK, left ? x - 12 : x + 12, y + 4, left ? 1 : 0);
            }
        }
    }

    /** The line on which fitted and actual hours are equal, named at its upper end. */
    private static void equal(Graphics2D g, Scales s) {
        g.setPaint(Tone.RULE.color());
        g.setStroke(Theme.THIN);
        g.draw(new Line2D.Double(
                s.area().getMinX(),
                s.area().getMaxY(),
                s.area().getMaxX(),
                s.area().getMinY()));
        String text = "actual = fitted";
        double x = s.area().getMaxX() - 26;
        Lettering.draw(g, text, Theme.SMALL, Tone.MUTED, x, s.area().getMinY() + 10, 1);
    }
}
