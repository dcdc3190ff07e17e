package weatherlap.reports.handout;

import java.util.List;
import weatherlap.charts.drawing.Piece;
import weatherlap.charts.drawing.WindowSketch;
import weatherlap.sim.geometry.Glass;
import weatherlap.sim.geometry.Part;

/** A window as the pieces that are drawn of it; none where it does not fit. */
final class WindowShape {
    private WindowShape() {}

    static WindowSketch.View of(Glass glass) {
        List<Piece> pieces = glass.glassFt2() <= 0
                ? List.of()
                : glass.pieces().stream()
                        .filter(piece -> !piece.rect().isEmpty())
                        .map(piece -> new Piece(
                                kind(piece.part()),
                                piece.rect().leftIn(),
                                piece.rect().bottomIn(),
                                piece.rect().widthIn(),
                                piece.rect().heightIn()))
                        .toList();
        return new WindowSketch.View(pieces, glass.glassFt2());
    }

    private static Piece.Kind kind(Part part) {
        return switch (part) {
            case GLASS -> Piece.Kind.GLASS;
            case SASH -> Piece.Kind.SASH;
            case FRAME -> Piece.Kind.FRAME;
            case MULL_POST -> Piece.Kind.MULL_POST;
            case OLD_FRAME -> Piece.Kind.OLD_FRAME;
            case GAP -> Piece.Kind.GAP;
        };
    }
}
