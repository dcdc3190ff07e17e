package weatherlap.charts.report;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.Placement;
import weatherlap.charts.kit.Scales;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;

/** What it means to lie in one of the four parts that the zero lines cut a plot into. */
record Quadrant(boolean right, boolean top, String words, Tone tone) {
    private static final double LINE_PX = 14;
    private static final double NARROWEST_PX = 110;

    /** Writes the words into the quadrant where nothing lies, as far out as can be; in two or three lines where it is narrow. */
    void draw(Graphics2D g, Scales s, Placement placement) {
        double left = right ? s.xPx(0) : s.area().getMinX();
        double end = right ? s.area().getMaxX() : s.xPx(0);
        List<String> lines = Lettering.wrap(words, Theme.SMALL_STRONG, end - left - 8, 3);
        double width = lines.stream()
                .mapToDouble(line -> Lettering.width(line, Theme.SMALL_STRONG))
                .max()
                .orElseThrow();
        double height = lines.size() * LINE_PX;
        double upper = (top ? s.area().getMinY() : s.yPx(0)) + 3;
        double lower = (top ? s.yPx(0) : s.area().getMaxY()) - 3;
        if (end - left < NARROWEST_PX || lower - upper < height) {
            return;
        }
        double outer = right ? end - width - 4 : left + 4;
        double inner = right ? left + 4 : end - width - 4;
        Rectangle2D box = rows(upper, lower - height)
                .boxed()
                .flatMap(y -> Stream.of(outer, inner).map(x -> new Rectangle2D.Double(x, y, width, height)))
                .filter(placement::isFree)
                .findFirst()
                .orElseGet(() -> new Rectangle2D.Double(outer, top ? upper : lower - height, width, height));
        placement.keepFree(box);
        for (int i = 0; i < lines.size(); i++) {
            double x = box.getX() + (right ? width : 0);
            Lettering.draw(g, lines.get(i), Theme.SMALL_STRONG, tone, x, box.getY() + 11 + i * LINE_PX, right ? 1 : 0);
        }
    }

    /** Where a box may start, the outer edge of the quadrant first. */
    private DoubleStream rows(double first, double last) {
        int steps = (int) ((last - first) / LINE_PX);
        return IntStream.rangeClosed(0, steps).mapToDouble(i -> top ? first + i * LINE_PX : last - i * LINE_PX);
    }
}
