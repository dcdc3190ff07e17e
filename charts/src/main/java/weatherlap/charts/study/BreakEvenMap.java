package weatherlap.charts.study;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jfree.chart.plot.XYPlot;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Frame;
import weatherlap.charts.kit.HeatMap;
import weatherlap.charts.kit.Layer;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.Scales;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.Check;
import weatherlap.sim.method.Contrast;

/**
 * The preferred method while two assumptions run over a grid.
 *
 * @param contrast the two methods
 * @param scope what is counted, for the line under the title
 * @param across the assumption along the page, with its unit
 * @param up the assumption up the page, with its unit
 * @param columns its values along the page, ascending, as text
 * @param rows values up the page, ascending, as text
 * @param chances chance that the first method costs less, 0 to 1: one list a row, ascending, one number a column
 */
public record BreakEvenMap(
        Contrast contrast,
        String scope,
        String across,
        String up,
        List<String> columns,
        List<String> rows,
        List<List<Double>> chances)
        implements Picture {

    private static final int KEY_PX = 40;

    public BreakEvenMap {
        Check.text("across", across);
        Check.text("up", up);
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        chances = chances.stream().map(List::copyOf).toList();
        Check.within("number of rows of chances", chances.size(), rows.size(), rows.size());
        for (List<Double> row : chances) {
            Check.within("number of chances in a row", row.size(), columns.size(), columns.size());
            row.forEach(chance -> Check.fraction("chance", chance));
        }
    }

    @Override
    public String name() {
        return "break-even-map";
    }

    @Override
    public String title() {
        return "Which method is preferred as two assumptions change";
    }

    @Override
    public int heightPx() {
        return isEmpty() ? Frame.EMPTY_PX : 460;
    }

    private boolean isEmpty() {
        return rows.isEmpty() || columns.isEmpty();
    }

    @Override
    public String message() {
        if (isEmpty()) {
            return "There is no grid to map.";
        }
        double share = chances.stream()
                .flatMap(List::stream)
                .mapToDouble(chance -> chance >= 0.5 ? 1 : 0)
                .average()
                .orElseThrow();
        return "Over " + Lettering.clean(across) + " from " + ends(columns) + " and " + Lettering.clean(up) + " from "
                + ends(rows)
                + ", " + contrast.first().inSentence() + " is preferred on " + Numbers.percent(share, 0)
                + " of the grid; with both at their lowest it costs less with a chance of "
                + Numbers.percent(chances.get(0).get(0), 0) + ", with both at their highest "
                + Numbers.percent(chances.get(rows.size() - 1).get(columns.size() - 1), 0) + ".";
    }

    private static String ends(List<String> values) {
        return Lettering.clean(values.get(0)) + " to " + Lettering.clean(values.get(values.size() - 1));
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, "chance that " + contrast.first().inSentence() + " costs less; " + scope);
        if (isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        HeatMap.key(g, contrast, 0, Frame.HEAD_PX + 10);
        String upwards = Lettering.fit("\u2191 " + up, Theme.SMALL, 340);
        Lettering.draw(g, upwards, Theme.SMALL, Tone.MUTED, 0, Frame.HEAD_PX + 34, 0);
        Lettering.draw(
                g,
                Lettering.fit("\u2192 " + across, Theme.SMALL, 340),
                Theme.SMALL,
                Tone.MUTED,
                widthPx(),
                Frame.HEAD_PX + 34,
                1);
        List<String> top = new ArrayList<>(rows);
        Collections.reverse(top);
        XYPlot plot = HeatMap.plot(contrast, columns, top, cells(), widthPx());
        plot.addAnnotation(((Layer) this::boundary).annotation());
        Frame.body(g, this, KEY_PX, plot);
    }

    private List<HeatMap.Cell> cells() {
        List<HeatMap.Cell> cells = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < columns.size(); column++) {
                cells.add(new HeatMap.Cell(column, row, fromTop(row, column)));
            }
        }
        return cells;
    }

    private double fromTop(int row, int column) {
        return chances.get(rows.size() - 1 - row).get(column);
    }

    /** The edges between cells that prefer different methods. */
    private void boundary(Graphics2D g, Scales s) {
        g.setPaint(Tone.INK.color());
        g.setStroke(Theme.stroke(2f));
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < columns.size(); column++) {
                boolean here = fromTop(row, column) >= 0.5;
                if (column + 1 < columns.size() && here != (fromTop(row, column + 1) >= 0.5)) {
                    double x = s.xPx(column + 1);
                    g.draw(new Line2D.Double(x, s.yPx(row), x, s.yPx(row + 1)));
                }
                if (row + 1 < rows.size() && here != (fromTop(row + 1, column) >= 0.5)) {
                    double y = s.yPx(row + 1);
                    g.draw(new Line2D.Double(s.xPx(column), y, s.xPx(column + 1), y));
                }
            }
        }
    }
}
