package weatherlap.charts.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import weatherlap.charts.kit.Pen;
import weatherlap.charts.kit.Tone;

/** Draws pieces, dimensions and labels of a drawing to scale. */
record Sketch(Graphics2D graphics, double pxPerIn) {

    private static final double TICK_PX = 3;

    static String clean(String text) {
        return Pen.clean(text);
    }

    void title(String text, double widthPx) {
        new Pen(graphics).title(text, widthPx);
    }

    void small(String text, Tone tone, double x, double y, double align) {
        new Pen(graphics).small(text, tone, x, y, align);
    }

    /** A piece of a window whose origin lies at (x, y) px. */
    void piece(WallPiece piece, double x, double y) {
        Rectangle2D box = new Rectangle2D.Double(
                x + piece.leftIn() * pxPerIn,
                y - piece.topIn() * pxPerIn,
                piece.widthIn() * pxPerIn,
                piece.heightIn() * pxPerIn);
        fill(box, tone(piece.kind()));
        if (piece.kind() == WallPiece.Kind.OLD_FRAME) {
            new Pen(graphics).hatch(box, Tone.RULE);
        }
        if (piece.kind() == WallPiece.Kind.GLASS) {
            outline(box, Tone.RULE, 0.75f);
        }
    }

    private static Tone tone(WallPiece.Kind kind) {
        return switch (kind) {
            case GAP -> Tone.LINE;
            case OLD_FRAME -> Tone.INSERT_TINT;
            case FRAME, MULL_POST -> Tone.RULE;
            case SASH -> Tone.FAINT;
            case GLASS -> Tone.FULL_FLANGE_TINT;
        };
    }

    void fill(Rectangle2D box, Tone tone) {
        graphics.setPaint(tone.color());
        graphics.fill(box);
    }

    void outline(Rectangle2D box, Tone tone, float width) {
        new Pen(graphics).line(tone, width);
        graphics.draw(box);
    }

    void line(double x1, double y1, double x2, double y2, Tone tone, float width) {
        new Pen(graphics).line(tone, width);
        graphics.draw(new Line2D.Double(x1, y1, x2, y2));
    }

    /** A dimension along the page, its length under it. */
    void across(double left, double right, double y, String length) {
        line(left, y, right, y, Tone.MUTED, 0.75f);
        line(left, y - TICK_PX, left, y + TICK_PX, Tone.MUTED, 0.75f);
        line(right, y - TICK_PX, right, y + TICK_PX, Tone.MUTED, 0.75f);
        small(length, Tone.MUTED, (left + right) / 2, y + 14, 0.5);
    }

    /** A dimension down the page, its length left of it. */
    void upright(double x, double top, double bottom, String length) {
        line(x, top, x, bottom, Tone.MUTED, 0.75f);
        line(x - TICK_PX, top, x + TICK_PX, top, Tone.MUTED, 0.75f);
        line(x - TICK_PX, bottom, x + TICK_PX, bottom, Tone.MUTED, 0.75f);
        small(length, Tone.MUTED, x - 5, (top + bottom) / 2 + 4, 1);
    }
}
