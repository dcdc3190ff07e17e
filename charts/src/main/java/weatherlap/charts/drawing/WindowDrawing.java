package weatherlap.charts.drawing;

import java.awt.Graphics2D;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import weatherlap.charts.MethodStyle;
import weatherlap.charts.Numbers;
import weatherlap.charts.Picture;
import weatherlap.charts.Tone;
import weatherlap.sim.Check;

/**
 * One window three times at the same scale: as it stands, after full-flange, and with an insert.
 *
 * @param label which window
 * @param today as it stands
 * @param fullFlange after full-flange
 * @param insert with an insert
 */
public record WindowDrawing(String label, View today, View fullFlange, View insert) implements Picture {

    /**
     * A window as it is seen square on from outside.
     *
     * @param pieces cover the window; none where it cannot be built
     * @param glassFt2 visible glass, ft²
     * @param lost fraction of today's glass that is gone; below 0 where there is more; 0 for today's window
     */
    public record View(List<Piece> pieces, double glassFt2, double lost) {
        public View {
            pieces = List.copyOf(pieces);
            Check.notNegative("glass", glassFt2);
            Check.finite("lost fraction", lost);
        }

        double widthIn() {
            return pieces.stream().mapToDouble(Piece::rightIn).max().orElse(0)
                    - pieces.stream().mapToDouble(Piece::leftIn).min().orElse(0);
        }

        double heightIn() {
            return pieces.stream().mapToDouble(Piece::topIn).max().orElse(0)
                    - pieces.stream().mapToDouble(Piece::bottomIn).min().orElse(0);
        }
    }

    private static final int HEAD_PX = 52;
    private static final int FOOT_PX = 96;
    private static final int MAX_PX = 210;
    private static final int LEAST_PX = 40;
    private static final int COLUMN_PX = 240;
    private static final int SIDES_PX = 90;

    public WindowDrawing {
        Check.text("label", label);
    }

    @Override
    public String name() {
        return "window-drawing";
    }

    @Override
    public String title() {
        return label;
    }

    @Override
    public int heightPx() {
        return HEAD_PX + (int) Math.ceil(tallestPx()) + FOOT_PX;
    }

    private Stream<View> views() {
        return Stream.of(today, fullFlange, insert);
    }

    private double tallestIn() {
        return views().mapToDouble(View::heightIn).max().orElseThrow();
    }

    private double tallestPx() {
        return Math.max(LEAST_PX, tallestIn() * pxPerIn());
    }

    /** The largest scale at which the widest view fits its column and the tallest the height. */
    double pxPerIn() {
        double widest = views().mapToDouble(View::widthIn).max().orElseThrow();
        return Math.min((COLUMN_PX - SIDES_PX) / Math.max(1, widest), MAX_PX / Math.max(1, tallestIn()));
    }

    @Override
    public String message() {
        return Sketch.clean(label) + " today shows " + area(today) + " of glass; full-flange would show "
                + words(fullFlange) + ", an insert " + words(insert) + ".";
    }

    private static String area(View view) {
        return Numbers.plain(view.glassFt2(), 1) + " ft\u00b2";
    }

    private static String words(View view) {
        return view.pieces().isEmpty() ? "nothing, as it does not fit" : area(view) + " (" + change(view) + ")";
    }

    private static String change(View view) {
        String share = Numbers.percent(Math.abs(view.lost()), 1);
        return share + (view.lost() < 0 ? " more" : " less");
    }

    @Override
    public void draw(Graphics2D graphics) {
        Sketch sketch = new Sketch(graphics, pxPerIn());
        sketch.title(label, widthPx());
        panel(sketch, 0, "today", Tone.INK, today);
        panel(sketch, 1, MethodStyle.FULL_FLANGE.label(), MethodStyle.FULL_FLANGE.text(), fullFlange);
        panel(sketch, 2, MethodStyle.INSERT.label(), MethodStyle.INSERT.text(), insert);
    }

    /** A view in its column, standing on a line common to all. */
    private void panel(Sketch sketch, int column, String name, Tone tone, View view) {
        double middle = COLUMN_PX * (column + 0.5);
        double base = HEAD_PX + tallestPx();
        sketch.strong(name, tone, middle, HEAD_PX - 12, 0.5);
        if (view.pieces().isEmpty()) {
            sketch.text("does not fit", Tone.MUTED, middle, base - 20, 0.5);
            return;
        }
        double left = middle - view.widthIn() * pxPerIn() / 2;
        double leftIn = view.pieces().stream().mapToDouble(Piece::leftIn).min().orElseThrow();
        double bottomIn =
                view.pieces().stream().mapToDouble(Piece::bottomIn).min().orElseThrow();
        view.pieces().stream()
                .sorted(Comparator.comparing(Piece::kind))
                .forEach(piece -> sketch.piece(piece, left - leftIn * pxPerIn(), base + bottomIn * pxPerIn()));
        double right = left + view.widthIn() * pxPerIn();
        sketch.across(left, right, base + 14, Inches.text(view.widthIn()));
        sketch.upright(left - 14, base - view.heightIn() * pxPerIn(), base, Inches.text(view.heightIn()));
        sketch.strong("glass " + area(view), Tone.INK, middle, base + 48, 0.5);
        if (column > 0) {
            sketch.text(change(view), tone, middle, base + 66, 0.5);
        }
        if (view.pieces().stream().anyMatch(piece -> piece.kind() == Piece.Kind.OLD_FRAME)) {
            sketch.small("hatched: the old frame, which stays", Tone.MUTED, middle, base + 84, 0.5);
        }
    }
}
