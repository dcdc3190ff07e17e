package weatherlap.charts.study;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import weatherlap.charts.kit.Layer;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.RowAxis;
import weatherlap.charts.kit.Scales;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;

/** RowAxis under headings: each group has its name in a row of its own, its members below. */
final class Grouped {

    static final int ROW_PX = 22;

    /** Room right of the plot for a number, px. */
    private static final int RIGHT_PX = 130;

    private Grouped() {}

    /** A heading and the labels under it. */
    record Group(String heading, List<String> labels) {}

    static int heightPx(List<Group> groups) {
        return ROW_PX * Math.max(2, rows(groups));
    }

    private static int rows(List<Group> groups) {
        return groups.stream().mapToInt(group -> 1 + group.labels().size()).sum();
    }

    /** A plot with the labels of all rows; headings stand at the left edge. */
    static XYPlot plot(List<Group> groups, NumberAxis axis) {
        List<String> labels = new ArrayList<>();
        for (Group group : groups) {
            labels.add("");
            labels.addAll(group.labels());
        }
        XYPlot plot = RowAxis.plot(labels, axis, Theme.WIDTH_PX, RIGHT_PX);
        plot.addAnnotation(((Layer) (g, s) -> headings(g, s, groups)).annotation());
        return plot;
    }

    private static void headings(Graphics2D g, Scales s, List<Group> groups) {
        int row = 0;
        for (Group group : groups) {
            String heading =
                    Lettering.fit(group.heading(), Theme.STRONG, s.area().getMinX() - Theme.SPACE_PX);
            double y = s.yPx(row + 0.5) + 4;
            Lettering.draw(g, heading, Theme.STRONG, Tone.INK, 0, y, 0);
            row += 1 + group.labels().size();
        }
    }

    /** The row of a member: the middle of it, from the top. */
    static double row(List<Group> groups, int group, int member) {
        return rows(groups.subList(0, group)) + 1 + member + 0.5;
    }
}
