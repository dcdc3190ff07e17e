package weatherlap.charts.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.Check;

/**
 * One window as it is seen from the room, with the wall and the returns around it; what is in the plane of the window is to scale, the
 * depth of the returns is not. Where glass was, and is no longer, is marked, with the inches lost at each edge.
 *
 * @param title what is drawn
 * @param message what it shows, in sentences
 * @param view the window as seen from outside; without pieces where it cannot be built
 * @param frameWidthIn of the old frame, in., which the returns meet
 * @param frameHeightIn likewise
 * @param before bounds of the glass today, in the frame of the view; empty: nothing is marked
 * @param edges of the glass, those that moved
 * @param pxPerIn scale, CSS px an inch
 */
public record RoomView(
        String title,
        String message,
        WindowSketch.View view,
        double frameWidthIn,
        double frameHeightIn,
        Rectangle2D before,
        List<Edge> edges,
        double pxPerIn)
        implements Picture {
    /** A side of the glass, as seen from the room. */
    public enum Side {
        LEFT,
        RIGHT,
        TOP,
        BOTTOM
    }

    /**
     * An edge of the glass that moved.
     *
     * @param label how far, as a tape measure reads it
     */
    public record Edge(Side side, String label) {}

    private static final double RETURN_PX = 11;
    private static final double WALL_X_PX = 44;
    private static final double WALL_Y_PX = 21;
    private static final double INSET_X_PX = WALL_X_PX + RETURN_PX;
    private static final double INSET_Y_PX = WALL_Y_PX + RETURN_PX;
    private static final Font TYPE = Theme.STRONG.deriveFont(13.5f);

    public RoomView {
        edges = List.copyOf(edges);
        Check.positive("scale", pxPerIn);
    }

    /** The largest scale at which a frame with its wall is no larger than so many px. */
    public static double scale(double frameWidthIn, double frameHeightIn, double widthPx, double heightPx) {
        return Math.min((widthPx - 2 * INSET_X_PX) / frameWidthIn, (heightPx - 2 * INSET_Y_PX) / frameHeightIn);
    }

    @Override
    public String name() {
        return "room-view";
    }

    @Override
    public int widthPx() {
        return (int) Math.ceil(frameWidthIn * pxPerIn + 2 * INSET_X_PX);
    }

    @Override
    public int heightPx() {
        return (int) Math.ceil(frameHeightIn * pxPerIn + 2 * INSET_Y_PX);
    }

    @Override
    public void draw(Graphics2D graphics) {
        Sketch sketch = new Sketch(graphics, pxPerIn);
        Rectangle2D frame =
                new Rectangle2D.Double(INSET_X_PX, INSET_Y_PX, frameWidthIn * pxPerIn, frameHeightIn * pxPerIn);
        sketch.fill(new Rectangle2D.Double(0, 0, widthPx(), heightPx()), Tone.FAINT);
        returns(graphics, frame);
        view.pieces().stream()
                .filter(piece -> piece.kind() != WallPiece.Kind.GAP)
                .sorted(Comparator.comparing(WallPiece::kind))
                .map(this::mirrored)
                .forEach(piece -> sketch.piece(piece, frame.getMinX(), frame.getMaxY()));
        if (!edges.isEmpty()) {
            mark(graphics, frame);
        }
    }

    /** From the room, left is right. */
    private WallPiece mirrored(WallPiece piece) {
        return new WallPiece(
                piece.kind(), frameWidthIn - piece.rightIn(), piece.bottomIn(), piece.widthIn(), piece.heightIn());
    }

    /** The four returns, lit from the window. */
    private static void returns(Graphics2D g, Rectangle2D frame) {
        double left = frame.getMinX();
        double right = frame.getMaxX();
        double top = frame.getMinY();
        double bottom = frame.getMaxY();
        double d = RETURN_PX;
        quad(g, 0.75, left - d, top - d, right + d, top - d, right, top, left, top);
        quad(g, 0.5, left - d, top - d, left, top, left, bottom, left - d, bottom + d);
        quad(g, 0.5, right + d, top - d, right, top, right, bottom, right + d, bottom + d);
        quad(g, 0.15, left - d, bottom + d, left, bottom, right, bottom, right + d, bottom + d);
    }

    private static void quad(Graphics2D g, double shade, double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        path.closePath();
        Color fill = Theme.mix(Tone.PAPER.color(), Tone.LINE.color(), shade);
        g.setPaint(fill);
        g.fill(path);
        g.setPaint(Tone.RULE.color());
        g.setStroke(new BasicStroke(0.6f));
        g.draw(path);
    }

    private void mark(Graphics2D g, Rectangle2D frame) {
        Rectangle2D glass = new Rectangle2D.Double(
                frame.getMaxX() - before.getMaxX() * pxPerIn,
                frame.getMaxY() - before.getMaxY() * pxPerIn,
                before.getWidth() * pxPerIn,
                before.getHeight() * pxPerIn);
        g.setPaint(Tone.INSERT_TEXT.color());
        g.setStroke(Theme.stroke(1.5f, 4, 2.5f));
        g.draw(glass);
        for (Edge edge : edges) {
            label(g, edge, frame);
        }
    }

    private static void label(Graphics2D g, Edge edge, Rectangle2D frame) {
        double gap = RETURN_PX + 4;
        double middleX = frame.getCenterX();
        double middleY = frame.getCenterY() + 5;
        switch (edge.side()) {
            case LEFT -> write(g, edge.label(), frame.getMinX() - gap, middleY, 1);
            case RIGHT -> write(g, edge.label(), frame.getMaxX() + gap, middleY, 0);
            case TOP -> write(g, edge.label(), middleX, frame.getMinY() - gap - 1, 0.5);
            case BOTTOM -> write(g, edge.label(), middleX, frame.getMaxY() + gap + 11, 0.5);
        }
    }

    private static void write(Graphics2D g, String label, double x, double y, double align) {
        Lettering.draw(g, Lettering.clean(label), TYPE, Tone.INSERT_TEXT, x, y, align);
    }
}
