package weatherlap.datasets.typed;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Directions of the compass by their letters or names: {@code SW}, {@code south-west}, {@code 225°}. */
public final class Bearings {
    private static final List<String> POINTS =
            List.of("n", "nne", "ne", "ene", "e", "ese", "se", "sse", "s", "ssw", "sw", "wsw", "w", "wnw", "nw", "nnw");
    private static final double STEP = 360.0 / POINTS.size();

    private Bearings() {}

    /** {@code S}, {@code SSW}, …; degrees where the bearing is no point of the compass. */
    public static String name(double degrees) {
        double point = degrees / STEP;
        return point == Math.rint(point) && point < POINTS.size()
                ? POINTS.get((int) point).toUpperCase(Locale.ROOT)
                : BigDecimal.valueOf(degrees).stripTrailingZeros().toPlainString();
    }

    /** Degrees clockwise from north, in steps of 22.5; empty: the text is no point of the compass. */
    public static OptionalDouble degrees(String cell) {
        String letters = Typing.folded(cell)
                .replace("north", "n")
                .replace("east", "e")
                .replace("south", "s")
                .replace("west", "w");
        int point = POINTS.indexOf(letters);
        return point < 0 ? OptionalDouble.empty() : OptionalDouble.of(STEP * point);
    }
}
