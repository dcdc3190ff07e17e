package weatherlap.charts.drawing;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.Pen;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.Check;

/**
 * Areas of glass as rows of squares: full where the glass stays, empty where it goes.
 *
 * @param title what is counted
 * @param message what it shows, in sentences
 * @param rows the first is today
 * @param squareFt2 that one square stands for, ft²
 */
public record GlassSquares(String title, String message, List<Row> rows, double squareFt2) implements Picture {
    /**
     * One choice.
     *
     * @param label its name
     * @param glassFt2 that it shows
     */
    public record Row(String label, double glassFt2) {
        public Row {
            Check.notNegative("glass", glassFt2);
        }
    }

    private static final int[] STEPS = {1, 2, 5};
    private static final int MOST_SQUARES = 42;
    private static final double LEAST_LABEL_PX = 168;
    private static final double MOST_LABEL_PX = 260;
    private static final double SIDE_PX = 10;
    private static final double SIDE_OF_PITCH = 0.8;
    private static final double GAP_PX = 8;
    private static final int ROW_PX = 19;
    private static final int WIDTH_PX = 700;
    private static final Font TYPE = Theme.TEXT.deriveFont(13.5f);

    public GlassSquares {
        rows = List.copyOf(rows);
        Check.positive("a square", squareFt2);
    }

    /** The least of 1, 2, 5, 10, 20, … ft² with which an area needs no more squares than a row has room for. */
    public static double squareFt2(double mostFt2) {
        double power = 1;
        while (true) {
            for (int step : STEPS) {
                if (mostFt2 <= step * power * MOST_SQUARES) {
                    return step * power;
                }
            }
            power *= 10;
        }
    }

    @Override
    public String name() {
        return "glass-squares";
    }

    @Override
    public int widthPx() {
        return WIDTH_PX;
    }

    @Override
    public int heightPx() {
        return ROW_PX * rows.size();
    }

    @Override
    public void draw(Graphics2D graphics) {
        double today = rows.isEmpty() ? 0 : rows.get(0).glassFt2();
        double labelPx = labelPx();
        double sidePx = Math.min(SIDE_PX, SIDE_OF_PITCH * (WIDTH_PX - labelPx) / MOST_SQUARES);
        for (int r = 0; r < rows.size(); r++) {
            Row row = rows.get(r);
            double base = r * ROW_PX + 4.0 + SIDE_PX;
            Lettering.draw(graphics, Lettering.fit(row.label(), TYPE, labelPx - GAP_PX), TYPE, Tone.INK, 0, base, 0);
            Graphics2D beside = (Graphics2D) graphics.create();
            beside.translate(labelPx, base - sidePx);
            squares(beside, row.glassFt2() / squareFt2, Math.max(today, row.glassFt2()) / squareFt2, sidePx);
            beside.dispose();
        }
    }

    /** As wide as the longest label, within bounds that leave the squares their room. */
    private double labelPx() {
        double longest = rows.stream()
                .mapToDouble(row -> Lettering.width(row.label(), TYPE))
                .max()
                .orElse(0);
        return Math.max(LEAST_LABEL_PX, Math.min(longest + GAP_PX, MOST_LABEL_PX));
    }

    private static void squares(Graphics2D graphics, double kept, double all, double sidePx) {
        Pen pen = new Pen(graphics);
        for (int i = 0; i < Math.ceil(all - 1e-9); i++) {
            double x = i * sidePx / SIDE_OF_PITCH;
            double whole = Math.min(1, all - i) * sidePx;
            double full = Math.max(0, Math.min(1, kept - i)) * sidePx;
            graphics.setPaint(Tone.FULL_FLANGE.color());
            graphics.fill(new Rectangle2D.Double(x, 0, full, sidePx));
            pen.line(Tone.MUTED, 0.75f);
            graphics.draw(new Rectangle2D.Double(x, 0, whole, sidePx));
        }
    }
}
