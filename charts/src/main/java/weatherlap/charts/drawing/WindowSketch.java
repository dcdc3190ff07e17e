package weatherlap.charts.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.Check;

/**
 * One window to scale and nothing else: for a sheet that writes its sizes beside it.
 *
 * @param label what is drawn
 * @param view the window; without pieces where it cannot be built
 * @param pxPerIn scale, CSS px an inch
 */
public record WindowSketch(String label, View view, double pxPerIn) implements Picture {
    /**
     * A window as it is seen square on from outside.
     *
     * @param pieces cover the window; none where it cannot be built
     * @param glassFt2 visible glass, ft²
     */
    public record View(List<WallPiece> pieces, double glassFt2) {
        public View {
            pieces = List.copyOf(pieces);
            Check.notNegative("glass", glassFt2);
        }

        double widthIn() {
            return pieces.stream().mapToDouble(WallPiece::rightIn).max().orElse(0) - leftIn();
        }

        double heightIn() {
            return pieces.stream().mapToDouble(WallPiece::topIn).max().orElse(0) - bottomIn();
        }

        private double leftIn() {
            return pieces.stream().mapToDouble(WallPiece::leftIn).min().orElse(0);
        }

        private double bottomIn() {
            return pieces.stream().mapToDouble(WallPiece::bottomIn).min().orElse(0);
        }
    }

    private static final double EDGE_PX = 1;

    public WindowSketch {
        Check.text("label", label);
        Check.positive("scale", pxPerIn);
    }

    /** The largest scale at which a view is no larger than so many px. */
    public static double scale(View view, double widthPx, double heightPx) {
        return Math.min(widthPx / Math.max(1, view.widthIn()), heightPx / Math.max(1, view.heightIn()));
    }

    @Override
    public String name() {
        return "window-sketch";
    }

    @Override
    public String title() {
        return label;
    }

    @Override
    public String message() {
        return Sketch.clean(label)
                + (view.pieces().isEmpty()
                        ? ": it does not fit."
                        : ", seen from outside, to scale: " + Numbers.plain(view.glassFt2(), 1)
                                + " square feet of glass.");
    }

    @Override
    public int widthPx() {
        return (int) Math.ceil(view.widthIn() * pxPerIn + 2 * EDGE_PX);
    }

    @Override
    public int heightPx() {
        return (int) Math.ceil(view.heightIn() * pxPerIn + 2 * EDGE_PX);
    }

    @Override
    public void draw(Graphics2D graphics) {
        Sketch sketch = new Sketch(graphics, pxPerIn);
        double x = EDGE_PX - view.leftIn() * pxPerIn;
        double y = heightPx() - EDGE_PX + view.bottomIn() * pxPerIn;
        view.pieces().stream()
                .sorted(Comparator.comparing(WallPiece::kind))
                .forEach(piece -> sketch.piece(piece, x, y));
        view.pieces().stream()
                .filter(piece -> piece.kind() == WallPiece.Kind.SASH)
                .forEach(piece -> sketch.outline(
                        new Rectangle2D.Double(
                                x + piece.leftIn() * pxPerIn,
                                y - piece.topIn() * pxPerIn,
                                piece.widthIn() * pxPerIn,
                                piece.heightIn() * pxPerIn),
                        Tone.RULE,
                        0.4f));
    }
}
