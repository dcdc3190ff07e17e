package weatherlap.charts.study;

import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
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
 * Whether forecasts keep their word: for each amount, the share of jobs that came out at or below what had been given each chance. On the
 * diagonal both agree.
 *
 * @param scope what is counted, for the line under the title
 */
public record CalibrationCurves(String scope, List<Panel> panels) implements Picture {
    private static final int COLUMNS = 3;
    private static final double SIDE_PX = 150;
    private static final double STEP_Y_PX = 206;
    private static final double LEFT_PX = 40;
    private static final int KEY_PX = 22;
    private static final Stroke[] STROKES = {Theme.stroke(1f, 2f, 3f), Theme.stroke(2.5f), Theme.THIN};

    /**
     * One amount.
     *
     * @param lines the first dashed, the second thick, the third thin
     */
    public record Panel(String label, List<Line> lines) {
        public Panel {
            Check.text("label", label);
            Check.within("lines", lines.size(), 0, STROKES.length);
            lines = List.copyOf(lines);
        }
    }

    /** Shares seen at chances evenly from 0 to 1. */
    public record Line(String label, List<Double> seen) {
        public Line {
            Check.within("points", seen.size(), 2, 1000);
            seen.forEach(share -> Check.within("share", share, 0, 1));
            seen = List.copyOf(seen);
        }

        /** Largest distance from the diagonal. */
        double off() {
            double most = 0;
            for (int i = 0; i < seen.size(); i++) {
                most = Math.max(most, Math.abs(seen.get(i) - i / (seen.size() - 1.0)));
            }
            return most;
        }
    }

    public CalibrationCurves {
        panels = List.copyOf(panels);
    }

    @Override
    public String name() {
        return "calibration-curves";
    }

    @Override
    public String title() {
        return "Did the chances that were given come true?";
    }

    @Override
    public int heightPx() {
        int rows = (panels.size() + COLUMNS - 1) / COLUMNS;
        return panels.isEmpty() ? Frame.EMPTY_PX : (int) (Frame.HEAD_PX + KEY_PX + rows * STEP_Y_PX);
    }

    @Override
    public String message() {
        if (panels.isEmpty()) {
            return "There are no jobs to show.";
        }
        StringBuilder text = new StringBuilder("Farthest from the chance that was given: ");
        for (int p = 0; p < panels.size(); p++) {
            Panel panel = panels.get(p);
            text.append(p == 0 ? "" : "; ").append(Lettering.clean(panel.label()));
            for (int l = 0; l < panel.lines().size(); l++) {
                Line line = panel.lines().get(l);
                text.append(l == 0 ? ", " : " and ")
                        .append(Lettering.clean(line.label()))
                        .append(" by ")
                        .append(Numbers.plain(100 * line.off(), 0))
                        .append(" points");
            }
        }
        return text.append('.').toString();
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, scope);
        if (panels.isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        key(g);
        double stepX = (Theme.WIDTH_PX - LEFT_PX) / COLUMNS;
        for (int p = 0; p < panels.size(); p++) {
            double x = LEFT_PX + p % COLUMNS * stepX;
            double y = Frame.HEAD_PX + KEY_PX + 14 + p / COLUMNS * STEP_Y_PX;
            panel(g, panels.get(p), x, y);
        }
    }

    private void key(Graphics2D g) {
        List<Line> lines = panels.get(0).lines();
        double width = (Theme.WIDTH_PX - LEFT_PX) / STROKES.length;
        for (int l = 0; l < lines.size(); l++) {
            double x = LEFT_PX + l * width;
            g.setPaint(Tone.INK.color());
            g.setStroke(STROKES[l]);
            g.draw(new Line2D.Double(x, Frame.HEAD_PX + 6.0, x + 28, Frame.HEAD_PX + 6.0));
            String label = Lettering.fit(lines.get(l).label(), Theme.SMALL, width - 40);
            Lettering.draw(g, label, Theme.SMALL, Tone.INK, x + 34, Frame.HEAD_PX + 10.0, 0);
        }
    }

    private static void panel(Graphics2D g, Panel panel, double x, double y) {
        g.setStroke(Theme.THIN);
        g.setPaint(Tone.RULE.color());
        g.draw(new Rectangle2D.Double(x, y, SIDE_PX, SIDE_PX));
        g.draw(new Line2D.Double(x, y + SIDE_PX, x + SIDE_PX, y));
        String label = Lettering.fit(panel.label(), Theme.SMALL, SIDE_PX);
        Lettering.draw(g, label, Theme.SMALL, Tone.INK, x + 4, y + 14, 0);
        Lettering.draw(g, "0", Theme.SMALL, Tone.MUTED, x, y + SIDE_PX + 14, 0.5);
        Lettering.draw(g, "chance given", Theme.SMALL, Tone.MUTED, x + SIDE_PX / 2, y + SIDE_PX + 14, 0.5);
        Lettering.draw(g, "100%", Theme.SMALL, Tone.MUTED, x + SIDE_PX, y + SIDE_PX + 14, 0.5);
        Lettering.draw(g, "100%", Theme.SMALL, Tone.MUTED, x - 4, y + 10, 1);
        for (int l = 0; l < panel.lines().size(); l++) {
            List<Double> seen = panel.lines().get(l).seen();
            Path2D path = new Path2D.Double();
            for (int i = 0; i < seen.size(); i++) {
                double px = x + SIDE_PX * i / (seen.size() - 1);
                double py = y + SIDE_PX * (1 - seen.get(i));
                if (i == 0) {
                    path.moveTo(px, py);
                } else {
                    path.lineTo(px, py);
                }
            }
            g.setPaint(Tone.INK.color());
            g.setStroke(STROKES[l]);
            g.draw(path);
        }
    }
}
