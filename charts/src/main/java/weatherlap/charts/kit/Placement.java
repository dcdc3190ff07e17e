package weatherlap.charts.kit;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Puts labels beside points where they cover neither each other nor a point, and leaves out those that find no room. */
public final class Placement {

    private static final double AWAY_PX = 11;
    private static final double MARK_PX = 5;

    private final Rectangle2D area;
    private final List<Rectangle2D> taken = new ArrayList<>();

    public Placement(Rectangle2D area) {
        this.area = area;
    }

    /** Keeps a place free. */
    public void keepFree(Rectangle2D box) {
        taken.add(box);
    }

    public void keepFree(Point2D point) {
        taken.add(new Rectangle2D.Double(point.getX() - MARK_PX, point.getY() - MARK_PX, 2 * MARK_PX, 2 * MARK_PX));
    }

    public boolean isFree(Rectangle2D box) {
        return taken.stream().noneMatch(box::intersects);
    }

    /** A free box for the text beside the point: right, left, above or below, and the corners between. */
    public Optional<Rectangle2D> place(String text, Font font, Point2D at) {
        Rectangle2D size = Lettering.box(text, font, 0, 0);
        Optional<Rectangle2D> free =
                candidates(size, at).filter(area::contains).filter(this::isFree).findFirst();
        free.ifPresent(taken::add);
        return free;
    }

    private static Stream<Rectangle2D> candidates(Rectangle2D size, Point2D at) {
        double w = size.getWidth();
        double h = size.getHeight();
        double[][] corners = {
            {AWAY_PX, -h / 2},
            {-AWAY_PX - w, -h / 2},
            {-w / 2, -h - AWAY_PX + 1},
            {-w / 2, AWAY_PX - 1},
            {AWAY_PX - 2, -h - 2},
            {AWAY_PX - 2, 2},
            {-AWAY_PX + 2 - w, -h - 2},
            {-AWAY_PX + 2 - w, 2}
        };
        return Stream.of(corners).map(c -> new Rectangle2D.Double(at.getX() + c[0], at.getY() + c[1], w, h));
    }

    public static void draw(Graphics2D g, String text, Font font, Tone tone, Rectangle2D box) {
        Lettering.draw(g, text, font, tone, box.getX(), box.getY() + font.getSize() * 0.8, 0);
    }
}
