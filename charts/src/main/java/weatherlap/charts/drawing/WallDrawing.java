package weatherlap.charts.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import weatherlap.analysis.words.Inches;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.Lettering;
import weatherlap.charts.kit.Pen;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.Theme;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.Check;

/**
 * A wall seen from outside, to scale: its siding courses and panels, those to take down shaded and marked, its openings, the
 * eave and the grade line.
 *
 * @param label which wall
 * @param piece what a piece of its siding is called: panel, board
 * @param widthIn of the wall, in.
 * @param eaveIn height of the eave over grade, in.
 * @param panels of the siding; none on brick or stucco
 * @param openings each with the mark that a list beside the drawing uses
 * @param tallestPx the height that the whole drawing may have, px, 200 or more
 */
public record WallDrawing(
        String label,
        String piece,
        double widthIn,
        double eaveIn,
        List<Panel> panels,
        List<Opening> openings,
        int tallestPx)
        implements Picture {

    /**
     * A siding panel, in. from the left corner and over grade.
     *
     * @param mark its letters
     * @param down whether it is taken down
     */
    public record Panel(String mark, double leftIn, double bottomIn, double widthIn, double heightIn, boolean down) {
        public Panel {
            Check.text("mark", mark);
            Check.notNegative("width", widthIn);
            Check.notNegative("height", heightIn);
        }
    }

    /** An opening, in. from the left corner and over grade. */
    public record Opening(String mark, double leftIn, double bottomIn, double widthIn, double heightIn) {
        public Opening {
            Check.text("mark", mark);
            Check.notNegative("width", widthIn);
            Check.notNegative("height", heightIn);
        }
    }

    /** Width of every drawing, px. */
    public static final int WIDTH_PX = 960;

    private static final int SIDE_PX = 64;
    private static final int HEAD_PX = 46;
    private static final int FOOT_PX = 62;
    private static final int MARK_PX = 11;
    private static final int MOST_MARK_PX = 28;
    private static final int TALLEST_PX = 568;

    /** What capitals keep from the edges of a course, both together, px. */
    private static final double CLEAR_PX = 2;

    /** Smallest type of letters, and of a number alone, that can be read on paper, px at the size of the drawing. */
    private static final double LEGIBLE_PX = 7;

    private static final double SMALLEST_PX = 4.5;

    /** Type of letters beside the wall, px. */
    private static final double LETTERS_PX = 8;

    /** Height of capitals and figures, which are all that a mark is of, as a share of the type's size. */
    private static final double CAPITAL = 0.73;

    /** Of panels, as high as a sheet that holds other things besides. */
    public WallDrawing(String label, double widthIn, double eaveIn, List<Panel> panels, List<Opening> openings) {
        this(label, "panel", widthIn, eaveIn, panels, openings, TALLEST_PX);
    }

    public WallDrawing {
        Check.within("tallest", tallestPx, 200, 10_000);
        Check.text("label", label);
        Check.text("piece", piece);
        Check.positive("width", widthIn);
        Check.positive("eave height", eaveIn);
        panels = List.copyOf(panels);
        openings = List.copyOf(openings);
    }

    @Override
    public String name() {
        return "wall-drawing";
    }

    @Override
    public String title() {
        return label;
    }

    @Override
    public int widthPx() {
        return WIDTH_PX;
    }

    @Override
    public int heightPx() {
        return HEAD_PX + (int) Math.ceil(eaveIn * pxPerIn()) + FOOT_PX;
    }

    double pxPerIn() {
        return Math.min((WIDTH_PX - 2.0 * SIDE_PX) / widthIn, (double) (tallestPx - HEAD_PX - FOOT_PX) / eaveIn);
    }

    @Override
    public String message() {
        long down = panels.stream().filter(Panel::down).count();
        String siding = panels.isEmpty()
                ? "it has no siding " + piece + "s to take down"
                : down + " of " + panels.size() + " siding " + piece + "s " + (down == 1 ? "comes" : "come") + " down";
        return Sketch.clean(label) + ": a wall " + Inches.feet(widthIn) + " wide and " + Inches.feet(eaveIn)
                + " high to the eave with " + Numbers.count(openings.size(), "opening", "openings") + "; "
                + siding + ".";
    }

    private double left() {
        return (WIDTH_PX - widthIn * pxPerIn()) / 2;
    }

    private double grade() {
        return HEAD_PX + eaveIn * pxPerIn();
    }

    private Rectangle2D box(double leftIn, double bottomIn, double boxWidthIn, double boxHeightIn) {
        double px = pxPerIn();
        return new Rectangle2D.Double(
                left() + leftIn * px, grade() - (bottomIn + boxHeightIn) * px, boxWidthIn * px, boxHeightIn * px);
    }

    @Override
    public void draw(Graphics2D graphics) {
        Sketch sketch = new Sketch(graphics, pxPerIn());
        sketch.title(label, widthPx());
        panels.stream().filter(panel -> !panel.down()).forEach(panel -> panel(sketch, panel));
        panels.stream().filter(Panel::down).forEach(panel -> panel(sketch, panel));
        openings.forEach(opening -> opening(sketch, opening));
        courseLetters(sketch);
        outline(sketch);
        scaleBar(sketch);
    }

    private void panel(Sketch sketch, Panel panel) {
        Rectangle2D box = box(panel.leftIn(), panel.bottomIn(), panel.widthIn(), panel.heightIn());
        if (panel.down()) {
            sketch.fill(box, Tone.LINE);
        }
        sketch.outline(box, panel.down() ? Tone.MUTED : Tone.LINE, 0.75f);
        if (panel.down()) {
            mark(sketch, panel, box);
        }
    }

    /** Size of type whose capitals stand clear of the edges of a course, px. */
    private static double sizePx(Rectangle2D box) {
        return Math.min((box.getHeight() - CLEAR_PX) / CAPITAL, MARK_PX);
    }

    /**
     * The mark of a panel where no opening hides it: at the first of seven places from its left end; in every other course one mark
     * further in. Where a course is too low for letters that can be read, they stand beside the wall, once for the course, and the panel
     * has its number alone.
     */
    private void mark(Sketch sketch, Panel panel, Rectangle2D box) {
        boolean whole = sizePx(box) >= LEGIBLE_PX;
        String mark = whole ? panel.mark() : panel.mark().replaceAll("[^0-9]", "");
        double size = Math.max(sizePx(box), 0);
        if (size < SMALLEST_PX) {
            return;
        }
        double half = 0.35 * size * mark.length() + 4;
        boolean further = Math.round(panel.bottomIn() / panel.heightIn()) % 2 == 1 && box.getWidth() > 4 * half;
        double inPx = further ? 2 * half : 0;
        for (int i = 0; i < 7; i++) {
            double x = box.getMinX() + half + inPx + i * (box.getWidth() - 2 * half - inPx) / 6;
            Rectangle2D place = new Rectangle2D.Double(x - half, box.getMinY(), 2 * half, box.getHeight());
            if (openings.stream()
                    .noneMatch(o -> place.intersects(box(o.leftIn(), o.bottomIn(), o.widthIn(), o.heightIn())))) {
                new Pen(sketch.graphics()).fitted(mark, Tone.INK, x, box.getCenterY(), size, box.getWidth());
                return;
            }
        }
    }

    /** Letters of low courses that come down, right of the wall, in as many columns as keep them apart. */
    private void courseLetters(Sketch sketch) {
        Map<Double, Panel> courses = new TreeMap<>();
        panels.stream()
                .filter(Panel::down)
                .filter(panel -> sizePx(box(0, 0, 1, panel.heightIn())) < LEGIBLE_PX)
                .forEach(panel -> courses.putIfAbsent(panel.bottomIn(), panel));
        int course = 0;
        for (Panel panel : courses.values()) {
            Rectangle2D box = box(widthIn, panel.bottomIn(), 0, panel.heightIn());
            int columns = (int) Math.ceil(LETTERS_PX / Math.max(box.getHeight(), 1));
            double x = box.getMaxX() + 5 + LETTERS_PX / 2 + course++ % columns * 2 * LETTERS_PX;
            new Pen(sketch.graphics())
                    .fitted(
                            panel.mark().replaceAll("[0-9]", ""),
                            Tone.INK,
                            x,
                            box.getCenterY(),
                            LETTERS_PX,
                            2 * LETTERS_PX);
        }
    }

    private void opening(Sketch sketch, Opening opening) {
        Rectangle2D box = box(opening.leftIn(), opening.bottomIn(), opening.widthIn(), opening.heightIn());
        sketch.fill(box, Tone.PAPER);
        sketch.outline(box, Tone.INK, 1.5f);
        double room = box.getWidth() - 4;
        String mark = Pen.fit(opening.mark(), Math.max(room, 14));
        if (Lettering.width(mark, Theme.SMALL_STRONG) <= room && box.getHeight() >= MARK_PX) {
            new Pen(sketch.graphics()).fitted(mark, Tone.INK, box.getCenterX(), box.getCenterY(), MARK_PX, room);
        } else {
            above(sketch, Pen.fit(opening.mark(), MOST_MARK_PX), box);
        }
    }

    /** The mark over an opening that is drawn too small to hold it, on a plate that keeps it off the siding. */
    private static void above(Sketch sketch, String mark, Rectangle2D box) {
        double width = Lettering.width(mark, Theme.SMALL_STRONG) + 4;
        double y = box.getMinY() - MARK_PX / 2.0 - 2;
        sketch.fill(
                new Rectangle2D.Double(box.getCenterX() - width / 2, y - MARK_PX / 2.0 - 1, width, MARK_PX + 2),
                Tone.PAPER);
        new Pen(sketch.graphics()).fitted(mark, Tone.INK, box.getCenterX(), y, MARK_PX, width);
    }

    private void outline(Sketch sketch) {
        Rectangle2D wall = box(0, 0, widthIn, eaveIn);
        sketch.outline(wall, Tone.INK, 1f);
        double right = wall.getMaxX();
        sketch.line(wall.getMinX() - 14, wall.getMinY(), right + 14, wall.getMinY(), Tone.INK, 3f);
        sketch.line(wall.getMinX() - 30, grade(), right + 30, grade(), Tone.INK, 2f);
        sketch.small("eave", Tone.MUTED, wall.getMinX() - 18, wall.getMinY() + 4, 1);
        sketch.small("grade", Tone.MUTED, wall.getMinX() - 18, grade() - 6, 1);
        sketch.upright(wall.getMinX() - 12, wall.getMinY(), grade(), Inches.feet(eaveIn));
        sketch.across(wall.getMinX(), right, grade() + 16, Inches.feet(widthIn));
    }

    /** A bar of whole feet, about a quarter of the wall, and what the shading means. */
    private void scaleBar(Sketch sketch) {
        double feet = Math.max(1, Math.floor(widthIn / 12 / 4));
        double end = left() + feet * 12 * pxPerIn();
        double y = grade() + 44;
        sketch.fill(new Rectangle2D.Double(left(), y, end - left(), 4), Tone.INK);
        sketch.small("0", Tone.MUTED, left() - 4, y + 6, 1);
        sketch.small(Inches.feet(feet * 12), Tone.MUTED, end + 6, y + 6, 0);
        if (panels.stream().anyMatch(Panel::down)) {
            double x = WIDTH_PX - 260.0;
            Rectangle2D box = new Rectangle2D.Double(x, y - 6, 28, 12);
            sketch.fill(box, Tone.LINE);
            sketch.outline(box, Tone.MUTED, 0.75f);
            sketch.small(piece + " to take down and put back", Tone.INK, x + 34, y + 4, 0);
        }
    }
}
