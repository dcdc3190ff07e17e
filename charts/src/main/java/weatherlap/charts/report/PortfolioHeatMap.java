package weatherlap.charts.report;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import org.jfree.chart.plot.XYPlot;
import weatherlap.analysis.words.InWords;
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
 * The share of houses that prefer the first method, over two of their columns.
 *
 * @param contrast the two methods
 * @param scope what is counted, for the line under the title
 * @param across name of what runs along the page, with its unit: storeys
 * @param down name of what runs down the page: overhang, in.
 * @param columns values along the page
 * @param rows values down the page
 * @param cells those that hold houses
 */
public record PortfolioHeatMap(
        Contrast contrast,
        String scope,
        String across,
        String down,
        List<String> columns,
        List<String> rows,
        List<Cell> cells)
        implements Picture {

    /**
     * Houses that have both values in common.
     *
     * @param column from 0, left to right
     * @param row from 0, top to bottom
     * @param houses how many, 1 or more
     * @param shareFirst of them that prefers the first method, 0 to 1
     */
    public record Cell(int column, int row, int houses, double shareFirst) {
        public Cell {
            Check.within("houses", houses, 1, Integer.MAX_VALUE);
            Check.fraction("share", shareFirst);
        }
    }

    private static final int KEY_PX = 40;
    private static final int ROW_PX = 44;

    public PortfolioHeatMap {
        Check.text("across", across);
        Check.text("down", down);
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        cells = List.copyOf(cells);
        for (Cell cell : cells) {
            Check.within("column", cell.column(), 0, columns.size() - 1);
            Check.within("row", cell.row(), 0, rows.size() - 1);
        }
    }

    @Override
    public String name() {
        return "portfolio-map";
    }

    @Override
    public String title() {
        return "Which houses prefer which method";
    }

    @Override
    public int heightPx() {
        return Frame.HEAD_PX + KEY_PX + 36 + ROW_PX * Math.max(2, rows.size());
    }

    @Override
    public String message() {
        if (cells.isEmpty()) {
            return "There are no houses to map.";
        }
        int houses = cells.stream().mapToInt(Cell::houses).sum();
        double preferring =
                cells.stream().mapToDouble(c -> c.houses() * c.shareFirst()).sum();
        Comparator<Cell> byShare = Comparator.comparingDouble(Cell::shareFirst);
        return InWords.capital(contrast.first().inSentence()) + " is preferred for "
                + Numbers.percent(preferring / houses, 0) + " of "
                + Numbers.count(houses, "house", "houses") + "; most for "
                + text(cells.stream().max(byShare).orElseThrow()) + ", least for "
                + text(cells.stream().min(byShare).orElseThrow()) + ".";
    }

    private String text(Cell cell) {
        return Lettering.clean(across) + " " + Lettering.clean(columns.get(cell.column())) + " with "
                + Lettering.clean(down) + " "
                + Lettering.clean(rows.get(cell.row())) + " (" + Numbers.percent(cell.shareFirst(), 0) + " of "
                + Numbers.plain(cell.houses(), 0) + ")";
    }

    @Override
    public void draw(Graphics2D g) {
        Frame.head(g, this, "share that prefers " + contrast.first().inSentence() + ", % (houses); " + scope);
        if (cells.isEmpty()) {
            Frame.empty(g, this);
            return;
        }
        HeatMap.key(g, contrast, 0, Frame.HEAD_PX + 10);
        String axes = Lettering.fit("across: " + across, Theme.SMALL, 340);
        Lettering.draw(g, axes, Theme.SMALL, Tone.MUTED, 0, Frame.HEAD_PX + 34, 0);
        Lettering.draw(
                g,
                Lettering.fit("down: " + down, Theme.SMALL, 340),
                Theme.SMALL,
                Tone.MUTED,
                Lettering.width(axes, Theme.SMALL) + 20,
                Frame.HEAD_PX + 34,
                0);
        XYPlot plot = HeatMap.plot(
                contrast,
                columns,
                rows,
                cells.stream()
                        .map(c -> new HeatMap.Cell(c.column(), c.row(), c.shareFirst()))
                        .toList(),
                widthPx());
        plot.addAnnotation(((Layer) this::numbers).annotation());
        Frame.body(g, this, KEY_PX, plot);
    }

    private void numbers(Graphics2D g, Scales s) {
        double wide = s.xPx(1) - s.xPx(0);
        g.setStroke(Theme.stroke(1.5f));
        for (Cell cell : cells) {
            double x = s.xPx(cell.column() + 0.5);
            double y = s.yPx(cell.row() + 0.5) + 4;
            g.setPaint(Tone.PAPER.color());
            g.draw(new Rectangle2D.Double(s.xPx(cell.column()), s.yPx(cell.row()), wide, s.yPx(1) - s.yPx(0)));
            Tone tone = Luminance.textOn(HeatMap.color(contrast, cell.shareFirst()));
            String share = Numbers.percent(cell.shareFirst(), 0);
            String number = share + " (" + Numbers.plain(cell.houses(), 0) + ")";
            String text = Lettering.width(number, Theme.TEXT) < wide - 4 ? number : share;
            if (Lettering.width(text, Theme.TEXT) < wide - 2) {
                Lettering.draw(g, text, Theme.TEXT, tone, x, y, 0.5);
            }
        }
    }
}
