package weatherlap.reports.handout;

import java.util.List;
import weatherlap.charts.drawing.WallPiece;
import weatherlap.charts.drawing.WindowSketch;
import weatherlap.sim.geometry.Glass;
import weatherlap.sim.geometry.Part;

/** A window as the pieces that are drawn of it; none where it does not fit. */
final class WindowShape {
    private WindowShape() {}

    static WindowSketch.View of(Glass glass) {
        List<WallPiece> pieces = glass.glassFt2() <= 0
                ? List.of()
                : glass.pieces().stream()
                        .filter(piece -> !piece.rect().isEmpty())
                        .map(piece -> new WallPiece(
                                kind(piece.part()),
                                piece.rect().leftIn(),
                                piece.rect().bottomIn(),
                                piece.rect().widthIn(),
                                piece.rect().heightIn()))
                        .toList();
        return new WindowSketch.View(pieces, glass.glassFt2());
    }

    private static WallPiece.Kind kind(Part part) {
        return switch (part) {
            case GLASS -> WallPiece.Kind.GLASS;
            case SASH -> WallPiece.Kind.SASH;
            case FRAME -> WallPiece.Kind.FRAME;
            case MULL_POST -> WallPiece.Kind.MULL_POST;
            case OLD_FRAME -> WallPiece.Kind.OLD_FRAME;
            case GAP -> WallPiece.Kind.GAP;
        };
    }
}
