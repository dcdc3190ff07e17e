package weatherlap.sim.geometry;

import java.util.OptionalDouble;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Readings;

/**
 * How far the readings of an opening disagree. Jambs out of plumb by x over the height of an opening W × H make its diagonals differ by
 *
 * <pre>  d = √((W + x)² + H²) − √((W − x)² + H²) ≈ 2Wx/√(W² + H²)</pre>
 *
 * (plane geometry), so x ≈ d√(W² + H²)/2W; an upright unit loses x of the width. Tolerances: 1/8 in. for widths and heights, 1/4 in. for
 * diagonals (general measuring guides).
 *
 * @param widthSpreadIn largest width less smallest
 * @param heightSpreadIn likewise
 * @param diagonalDifferenceIn empty where the diagonals were not taken
 * @param outOfPlumbIn x, as far as the diagonals tell; 0 without them
 * @param withinTolerance all of them
 */
public record Squareness(
        double widthSpreadIn,
        double heightSpreadIn,
        OptionalDouble diagonalDifferenceIn,
        double outOfPlumbIn,
        boolean withinTolerance) {
    /** Nothing was read. */
    static final Squareness UNREAD = new Squareness(0, 0, OptionalDouble.empty(), 0, true);

    /** Of an opening, as far as it was read. */
    static Squareness of(Opening opening, Scenario scenario) {
        return opening.readings().isPresent() ? of(opening.readings().get(), scenario) : UNREAD;
    }

    static Squareness of(Readings readings, Scenario scenario) {
        double widthSpreadIn = spread(readings.widthTopIn(), readings.widthMiddleIn(), readings.widthBottomIn());
        double heightSpreadIn = spread(readings.heightLeftIn(), readings.heightMiddleIn(), readings.heightRightIn());
        OptionalDouble differenceIn = difference(readings);
        double outOfPlumbIn = differenceIn.isPresent()
                ? outOfPlumbIn(readings.smallestWidthIn(), readings.smallestHeightIn(), differenceIn.getAsDouble())
                : 0;
        boolean within = Math.max(widthSpreadIn, heightSpreadIn) <= scenario.value(Scalar.READING_TOLERANCE_IN)
                && differenceIn.orElse(0) <= scenario.value(Scalar.DIAGONAL_TOLERANCE_IN);
        return new Squareness(widthSpreadIn, heightSpreadIn, differenceIn, outOfPlumbIn, within);
    }

    /** The lean, in., that a difference of the diagonals tells of. */
    static double outOfPlumbIn(double widthIn, double heightIn, double diagonalDifferenceIn) {
        return diagonalDifferenceIn * Math.hypot(widthIn, heightIn) / (2 * widthIn);
    }

    private static OptionalDouble difference(Readings readings) {
        if (readings.diagonalRisingIn().isEmpty()
                || readings.diagonalFallingIn().isEmpty()) {
            return OptionalDouble.empty();
        }
        double rising = readings.diagonalRisingIn().getAsDouble();
        return OptionalDouble.of(Math.abs(rising - readings.diagonalFallingIn().getAsDouble()));
    }

    private static double spread(double a, double b, double c) {
        return Math.max(a, Math.max(b, c)) - Math.min(a, Math.min(b, c));
    }
}
