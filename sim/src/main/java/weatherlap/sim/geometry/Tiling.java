package weatherlap.sim.geometry;

import java.util.ArrayList;
import java.util.List;
import weatherlap.sim.geometry.Glass.Piece;

/** Collects the pieces of an opening so that they cover it once. */
final class Tiling {
    private final List<Piece> pieces = new ArrayList<>();

    void add(Part part, Rect rect) {
        if (!rect.isEmpty()) {
            pieces.add(new Piece(part, rect));
        }
    }

    void add(Part part, List<Rect> rects) {
        for (Rect rect : rects) {
            add(part, rect);
        }
    }

    /** The ring between an outer and an inner rectangle: uprights over the full height, head and sill between them. */
    void ring(Part part, Rect outer, Rect inner) {
        if (inner.isEmpty()) {
            add(part, outer);
            return;
        }
        add(part, Rect.between(outer.leftIn(), outer.bottomIn(), inner.leftIn(), outer.topIn()));
        add(part, Rect.between(inner.rightIn(), outer.bottomIn(), outer.rightIn(), outer.topIn()));
        add(part, Rect.between(inner.leftIn(), inner.topIn(), inner.rightIn(), outer.topIn()));
        add(part, Rect.between(inner.leftIn(), outer.bottomIn(), inner.rightIn(), inner.bottomIn()));
    }

    List<Piece> pieces() {
        return List.copyOf(pieces);
    }
}
