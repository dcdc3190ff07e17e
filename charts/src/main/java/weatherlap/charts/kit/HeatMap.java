package weatherlap.charts.kit;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.PaintScale;
import org.jfree.chart.renderer.xy.XYBlockRenderer;
import org.jfree.data.xy.DefaultXYZDataset;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;

/** Draws the share that prefers the first method as color over a grid: its color at 1, that of the second at 0, pale between. */
public final class HeatMap {

    private static final double LABEL_SHARE = 0.26;
    private static final int TOP_LABELS_PX = 34;

    private HeatMap() {}

    /** A cell: column from the left, row from the top, share 0 to 1. */
    public record Cell(int column, int row, double share) {}

    /** From a share to a colour. */
    public static Color color(Contrast contrast, double share) {
        Color middle = Tone.FAINT.color();
        return share >= 0.5
                ? Theme.mix(middle, MethodStyle.of(contrast.first()).color(), 2 * share - 1)
                : Theme.mix(middle, MethodStyle.of(contrast.second()).color(), 1 - 2 * share);
    }

    /** A plot with the cells and, left and on top, the labels of rows and columns. */
    public static XYPlot plot(
            Contrast contrast, List<String> columns, List<String> rows, List<Cell> cells, int widthPx) {
        DefaultXYZDataset data = new DefaultXYZDataset();
        data.addSeries("share", new double[][] {
            cells.stream().mapToDouble(c -> c.column() + 0.5).toArray(),
            cells.stream().mapToDouble(c -> c.row() + 0.5).toArray(),
            cells.stream().mapToDouble(Cell::share).toArray()
        });
        XYBlockRenderer renderer = new XYBlockRenderer();
        renderer.setPaintScale(new Scale(contrast));
        NumberAxis across = new NumberAxis();
        across.setRange(0, columns.size());
        across.setVisible(false);
        NumberAxis down = Axes.rows(rows.size());
        XYPlot plot = RowAxis.themed(new XYPlot(data, across, down, renderer));
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.setRangeZeroBaselineVisible(false);
        plot.setRangeAxisLocation(AxisLocation.TOP_OR_LEFT);
        double widest = rows.stream()
                .mapToDouble(r -> Lettering.width(Lettering.clean(r), Theme.TEXT))
                .max()
                .orElse(0);
        double room = Math.min(widthPx * LABEL_SHARE, widest) + 2 * Theme.SPACE_PX;
        AxisSpace left = new AxisSpace();
        left.setLeft(room);
        plot.setFixedRangeAxisSpace(left);
        AxisSpace top = new AxisSpace();
        top.setTop(TOP_LABELS_PX);
        plot.setFixedDomainAxisSpace(top);
        plot.addAnnotation(((Layer) (g, s) -> {
                    rowLabels(g, s, rows, room);
                    columnLabels(g, s, columns);
                })
                .annotation());
        return plot;
    }

    private static void rowLabels(Graphics2D g, Scales s, List<String> rows, double room) {
        double high = s.yPx(1) - s.yPx(0);
        int every = (int) Math.ceil(15 / high);
        for (int i = 0; i < rows.size(); i += every) {
            String text = Lettering.fit(rows.get(i), Theme.TEXT, room - 2 * Theme.SPACE_PX);
            double y = s.yPx(i + 0.5) + 4;
            Lettering.draw(g, text, Theme.TEXT, Tone.INK, s.area().getMinX() - Theme.SPACE_PX, y, 1);
        }
    }

    /** Columns whose labels find room in two lines; every n-th where there are many. */
    private static void columnLabels(Graphics2D g, Scales s, List<String> columns) {
        double wide = s.xPx(1) - s.xPx(0);
        int every = (int) Math.ceil(44 / wide);
        for (int i = 0; i < columns.size(); i += every) {
            List<String> lines = Lettering.wrap(columns.get(i), Theme.SMALL, wide * every - 6, 2);
            for (int k = 0; k < lines.size(); k++) {
                double y = s.area().getMinY() - 8 - (lines.size() - 1 - k) * 13.0;
                Lettering.draw(g, lines.get(k), Theme.SMALL, Tone.INK, s.xPx(i + 0.5), y, 0.5);
            }
        }
    }

    /** A bar that says what the colours mean; as wide as the picture allows. */
    public static void key(Graphics2D g, Contrast contrast, double x, double y) {
        double width = 240;
        int steps = 24;
        for (int i = 0; i < steps; i++) {
            g.setPaint(color(contrast, (i + 0.5) / steps));
            g.fill(new Rectangle2D.Double(x + 130 + i * width / steps, y - 9, width / steps + 0.5, 10));
        }
        prefers(g, contrast.second(), x + 122, y, 1);
        prefers(g, contrast.first(), x + 138 + width, y, 0);
    }

    private static void prefers(Graphics2D g, Method method, double x, double y, double align) {
        Lettering.draw(
                g,
                method.label() + " preferred",
                Theme.SMALL_STRONG,
                MethodStyle.of(method).text(),
                x,
                y,
                align);
    }

    private record Scale(Contrast contrast) implements PaintScale {
        @Override
        public double getLowerBound() {
            return 0;
        }

        @Override
        public double getUpperBound() {
            return 1;
        }

        @Override
        public Paint getPaint(double value) {
            return color(contrast, value);
        }
    }
}
