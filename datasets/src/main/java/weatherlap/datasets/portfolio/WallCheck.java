package weatherlap.datasets.portfolio;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Row;
import weatherlap.sim.Each;
import weatherlap.sim.Units;

/** Whether the windows of a wall lie within it and beside each other. Lengths in inches. */
final class WallCheck {
    /** Less than this is a rounding of the table, not an overlap: 1/1000 in. */
    private static final double SLACK_IN = 0.001;

    private record Frame(Row row, double left, double right, double bottom, double top) {
        static Frame of(Row row) {
            double left = row.number("left_in");
            double bottom = row.number("sill_height_in");
            return new Frame(
                    row, left, left + row.number("frame_width_in"), bottom, bottom + row.number("frame_height_in"));
        }

        boolean overlaps(Frame other) {
            return left < other.right - SLACK_IN
                    && other.left < right - SLACK_IN
                    && bottom < other.top - SLACK_IN
                    && other.bottom < top - SLACK_IN;
        }
    }

    private WallCheck() {}

    static void check(Row wall, List<Row> openings, Problems problems) {
        List<Frame> frames = Each.of(openings, Frame::of);
        for (Frame frame : frames) {
            checkEdges(wall, frame, problems);
        }
        checkOverlaps(frames, problems);
    }

    private static void checkEdges(Row wall, Frame frame, Problems problems) {
        double width = Units.feetToInches(wall.number("width_ft"));
        double eave = Units.feetToInches(wall.number("eave_height_ft"));
        boolean fitsTurned = frame.left() + frame.top() - frame.bottom() <= width
                && frame.bottom() + frame.right() - frame.left() <= eave;
        String hint = fitsTurned ? "; the other way round it fits: check that width and height are not swapped" : "";
        if (frame.right() > width + SLACK_IN) {
            frame.row()
                    .error(
                            problems,
                            "left_in",
                            "the right edge (left_in + frame_width_in = " + CsvText.cell(frame.right())
                                    + ") is past the end of the wall (" + CsvText.cell(width) + " inches, "
                                    + wall.file() + " row " + wall.line() + ")" + hint);
        }
        if (frame.top() > eave + SLACK_IN) {
            frame.row()
                    .error(
                            problems,
                            "sill_height_in",
                            "the head (sill_height_in + frame_height_in = " + CsvText.cell(frame.top())
                                    + ") is above the eave (" + CsvText.cell(eave) + " inches, " + wall.file()
                                    + " row " + wall.line() + ")" + hint);
        }
    }

    /** Sweeps from left to right; each window is compared with those whose right edge is not yet passed. */
    private static void checkOverlaps(List<Frame> frames, Problems problems) {
        List<Frame> sorted = new ArrayList<>(frames);
        sorted.sort(Comparator.comparingDouble(Frame::left)
                .thenComparingInt(frame -> frame.row().line()));
        List<Frame> open = new ArrayList<>();
        for (Frame frame : sorted) {
            open.removeIf(passed -> passed.right() <= frame.left());
            for (Frame other : open) {
                if (frame.overlaps(other)) {
                    report(frame, other, problems);
                    break;
                }
            }
            open.add(frame);
        }
    }

    private static void report(Frame one, Frame other, Problems problems) {
        boolean oneIsLater = one.row().line() > other.row().line();
        Row later = oneIsLater ? one.row() : other.row();
        Row earlier = oneIsLater ? other.row() : one.row();
        later.error(
                problems,
                "left_in",
                "this opening overlaps " + Quoted.of(earlier.text("opening_id")) + " in row " + earlier.line()
                        + " of the same wall");
    }
}
