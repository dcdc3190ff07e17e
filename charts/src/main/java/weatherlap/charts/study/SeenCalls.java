package weatherlap.charts.study;

import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
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
 * Calls seen, a bar, beside those expected before (a ring) and after a fit (a dot), a row for each kind of jobs.
 *
 * @param scope what is counted, for the line under the title
 */
public record SeenCalls(String scope, List<Row> rows) implements Picture {
    private static final int LABEL_PX = 190;
    private static final int ROW_PX = 20;
    private static final int RIGHT_PX = 90;
    private static final double RADIUS_PX = 4;

    /** A kind of jobs. */
    public record Row(String label, int seen, double expected, double fitted) {
        public Row {
            Check.text("label", label);
            Check.notNegative("calls seen", seen);
            Check.notNegative("calls expected", expected);
            Check.notNegative("calls fitted", fitted);
        }

        double most() {
            return Math.max(seen, Math.max(expected, fitted));
        }
    }

    public SeenCalls {
        rows = List.copyOf(rows);
    }

    @Override
    public String name() {
        return "seen-calls";
    }

    @Override
    public String title() {
        return "Leak calls seen and expected";
    }

    @Override
    public int heightPx() {
        return rows.isEmpty() ? Frame.EMPTY_PX : Frame.HEAD_PX + 24 + ROW_PX * rows.size();
    }

    @Override
    public String message() {
        return rows.stream()
                .max(Comparator.comparingDouble(row -> Math.abs(row.seen() - row.fitted())))
                .map(row -> "Farthest from the fit stands " + Lettering.clean(row.label()) + ", with "
                        + Numbers.count(row.seen(), "call", "calls") + " seen, " + Numbers.plain(row.expected(), 1)
                        + " expected by the tables and " + Numbers.plain(row.fitted(), 1) + " by the fit.")
                .orElse("There are no jobs to show.");
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, scope);
        if (rows.isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        Lettering.draw(
                g,
                "bar: seen; ring: expected by the tables; dot: by the fit",
                Theme.SMALL,
                Tone.MUTED,
                LABEL_PX,
                Frame.HEAD_PX + 8,
                0);
        double most = rows.stream().mapToDouble(Row::most).max().orElse(1);
        double scale = (Theme.WIDTH_PX - LABEL_PX - RIGHT_PX) / Math.max(most, Double.MIN_NORMAL);
        for (int i = 0; i < rows.size(); i++) {
            row(g, rows.get(i), Frame.HEAD_PX + 28.0 + ROW_PX * i, scale);
        }
    }

    private static void row(Graphics2D g, Row row, double y, double scale) {
        String label = Lettering.fit(row.label(), Theme.SMALL, LABEL_PX - 12);
        Lettering.draw(g, label, Theme.SMALL, Tone.INK, LABEL_PX - 8.0, y + 4, 1);
        g.setPaint(Tone.RULE.color());
        g.fill(new Rectangle2D.Double(LABEL_PX, y - 6, row.seen() * scale, 12));
        g.setPaint(Tone.INK.color());
        g.setStroke(Theme.THIN);
        g.draw(new Line2D.Double(LABEL_PX, y - 8, LABEL_PX, y + 8));
        g.draw(mark(row.expected() * scale, y));
        g.fill(mark(row.fitted() * scale, y));
        Lettering.draw(
                g, Numbers.plain(row.seen(), 0), Theme.SMALL, Tone.MUTED, LABEL_PX + row.most() * scale + 12, y + 4, 0);
    }

    private static Ellipse2D mark(double x, double y) {
        return new Ellipse2D.Double(LABEL_PX + x - RADIUS_PX, y - RADIUS_PX, 2 * RADIUS_PX, 2 * RADIUS_PX);
    }
}
