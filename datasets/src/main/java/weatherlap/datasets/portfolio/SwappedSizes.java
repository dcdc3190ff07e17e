package weatherlap.datasets.portfolio;

import java.util.List;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Row;
import weatherlap.sim.Each;

/**
 * Warns of a frame whose width and height may stand in each other's place, where the other windows of its house say so. Sliders, awnings and
 * picture windows are built both ways, so their own shape tells little. That heads on a wall stand in line is common practice, no source;
 * so a wrong warning is possible, and nothing is refused.
 */
final class SwappedSizes {
    /** Heads further apart are not in line, inches: judgement. */
    private static final double APART_IN = 3;

    /** Heads, sills or sizes less apart are the same, inches: judgement. */
    private static final double SAME_IN = 0.5;

    private SwappedSizes() {}

    /** Within one wall: a head that stands out of line and would be in the line of two others the other way round. */
    static void checkHeads(List<Row> wall, Problems problems) {
        double[] heads = Each.numbers(wall, SwappedSizes::head);
        for (int i = 0; i < heads.length; i++) {
            Row row = wall.get(i);
            if (isAlone(heads, i) && !UsualValues.isOddlyShaped(row)) {
                List<Row> line = wall.stream()
                        .filter(other -> other != row && isNear(head(other), turnedHead(row), SAME_IN))
                        .toList();
                if (line.size() > 1 && line.stream().noneMatch(other -> isNear(sill(other), sill(row), SAME_IN))) {
                    warn(
                            row,
                            "its head is not in line with those of " + named(line.get(0)) + " and others, and would be"
                                    + " the other way round",
                            problems);
                }
            }
        }
    }

    private static boolean isAlone(double[] heads, int one) {
        for (int other = 0; other < heads.length; other++) {
            if (other != one && isNear(heads[other], heads[one], APART_IN)) {
                return false;
            }
        }
        return true;
    }

    /** Within one house: two windows of one kind with the same two sizes, the other way round. */
    static void checkTwins(List<Row> house, Problems problems) {
        double[] widths = Each.numbers(house, SwappedSizes::width);
        double[] heights = Each.numbers(house, SwappedSizes::height);
        for (int i = 0; i < widths.length; i++) {
            Row row = house.get(i);
            for (int j = 0; j < i && !isNear(widths[i], heights[i], SAME_IN); j++) {
                if (isNear(widths[j], heights[i], 0)
                        && isNear(heights[j], widths[i], 0)
                        && house.get(j).text("operation").equals(row.text("operation"))
                        && !UsualValues.isOddlyShaped(row)) {
                    warn(row, "the sizes are those of " + named(house.get(j)) + " the other way round", problems);
                    break;
                }
            }
        }
    }

    private static void warn(Row row, String why, Problems problems) {
        row.warning(problems, "frame_height_in", why + "; check that width and height are not swapped");
    }

    private static String named(Row other) {
        return Quoted.of(other.text("opening_id")) + " in row " + other.line();
    }

    private static boolean isNear(double one, double other, double within) {
        return Math.abs(one - other) <= within;
    }

    private static double width(Row row) {
        return row.number("frame_width_in");
    }

    private static double height(Row row) {
        return row.number("frame_height_in");
    }

    private static double sill(Row row) {
        return row.number("sill_height_in");
    }

    private static double head(Row row) {
        return sill(row) + height(row);
    }

    private static double turnedHead(Row row) {
        return sill(row) + width(row);
    }
}
