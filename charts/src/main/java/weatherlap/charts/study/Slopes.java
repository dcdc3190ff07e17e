package weatherlap.charts.study;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import weatherlap.charts.kit.Frame;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.MethodStyle;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;

/**
 * A few numbers of two methods under several sets of assumptions: a panel a number, a line a method, sloping from one set to the next.
 *
 * @param scope what is counted, for the line under the title
 * @param sets names of the sets, two or more
 * @param first look of the first method
 * @param second look of the second
 */
public record Slopes(
        String scope, String message, List<String> sets, MethodStyle first, MethodStyle second, List<Panel> panels)
        implements Picture {
    private static final int LABEL_PX = 150;
    private static final int PANEL_PX = 96;
    private static final int EDGE_PX = 26;
    private static final int FOOT_PX = 26;

    /**
     * One number.
     *
     * @param label what it is
     * @param first of the first method, by set
     * @param second of the second, likewise
     * @param shown how it is written
     */
    public record Panel(String label, List<Double> first, List<Double> second, DoubleFunction<String> shown) {
        public Panel {
            first = List.copyOf(first);
            second = List.copyOf(second);
        }

        private DoubleStream all() {
            return Stream.concat(first.stream(), second.stream()).mapToDouble(value -> value);
        }
    }

    public Slopes {
        sets = List.copyOf(sets);
        panels = List.copyOf(panels);
        for (Panel panel : panels) {
            if (panel.first().size() != sets.size() || panel.second().size() != sets.size()) {
                throw new IllegalArgumentException(panel.label() + " must have a value for each set.");
            }
        }
    }

    @Override
    public String name() {
        return "scenarios";
    }

    @Override
    public String title() {
        return "What each set of assumptions makes of the two methods";
    }

    @Override
    public int heightPx() {
        return sets.isEmpty() ? Frame.EMPTY_PX : Frame.HEAD_PX + PANEL_PX * panels.size() + FOOT_PX;
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, scope);
        if (sets.isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        for (int p = 0; p < panels.size(); p++) {
            panel(g, panels.get(p), Frame.HEAD_PX + (double) PANEL_PX * p);
        }
        for (int s = 0; s < sets.size(); s++) {
            String name = Lettering.fit(sets.get(s), Theme.SMALL, columnPx() - 8);
            Lettering.draw(g, name, Theme.SMALL, Tone.INK, x(s), heightPx() - 8.0, 0.5);
        }
    }

    private double columnPx() {
        return (double) (Theme.WIDTH_PX - LABEL_PX) / sets.size();
    }

    private double x(int set) {
        return LABEL_PX + columnPx() * (set + 0.5);
    }

    private void panel(Graphics2D g, Panel panel, double top) {
        String label = Lettering.fit(panel.label(), Theme.STRONG, LABEL_PX - 8.0);
        Lettering.draw(g, label, Theme.STRONG, Tone.INK, 0, top + PANEL_PX / 2.0 + 4, 0);
        g.setPaint(Tone.LINE.color());
        g.setStroke(Theme.THIN);
        g.draw(new Line2D.Double(0, top + PANEL_PX, Theme.WIDTH_PX, top + PANEL_PX));
        double low = panel.all().min().orElse(0);
        double room = Math.max(panel.all().max().orElse(1) - low, Double.MIN_NORMAL);
        for (int s = 0; s < sets.size(); s++) {
            boolean firstAbove = panel.first().get(s) >= panel.second().get(s);
            mark(g, panel, panel.first(), s, first, firstAbove, new Band(top, low, room));
            mark(g, panel, panel.second(), s, second, !firstAbove, new Band(top, low, room));
        }
    }

    /** Where a panel's values lie: its top, its least value, and how far they reach. */
    private record Band(double top, double low, double room) {
        double y(double value) {
            return top + PANEL_PX - EDGE_PX - (value - low) / room * (PANEL_PX - 2.0 * EDGE_PX);
        }
    }

    private void mark(
            Graphics2D g, Panel panel, List<Double> values, int set, MethodStyle style, boolean above, Band band) {
        double y = band.y(values.get(set));
        g.setPaint(style.color());
        if (set > 0) {
            g.setStroke(style.line());
            g.draw(new Line2D.Double(x(set - 1), band.y(values.get(set - 1)), x(set), y));
        }
        g.fill(AffineTransform.getTranslateInstance(x(set), y).createTransformedShape(style.mark()));
        String text = panel.shown().apply(values.get(set));
        Lettering.draw(g, text, Theme.SMALL, style.text(), x(set), above ? y - 9 : y + 18, 0.5);
    }
}
