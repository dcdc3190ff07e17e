package weatherlap.sim.house;

import java.util.OptionalDouble;
import weatherlap.sim.Check;

/**
 * Tape readings of the existing frame, outside to outside, in.: three widths and three heights; two diagonals where they were taken.
 * The sizes of both methods are worked out from them.
 */
public record Readings(
        double widthTopIn,
        double widthMiddleIn,
        double widthBottomIn,
        double heightLeftIn,
        double heightMiddleIn,
        double heightRightIn,
        OptionalDouble diagonalRisingIn,
        OptionalDouble diagonalFallingIn) {
    public Readings {
        Check.positive("width at the top", widthTopIn);
        Check.positive("width in the middle", widthMiddleIn);
        Check.positive("width at the bottom", widthBottomIn);
        Check.positive("height at the left", heightLeftIn);
        Check.positive("height in the middle", heightMiddleIn);
        Check.positive("height at the right", heightRightIn);
    }

    public double smallestWidthIn() {
        return Math.min(widthTopIn, Math.min(widthMiddleIn, widthBottomIn));
    }

    public double smallestHeightIn() {
        return Math.min(heightLeftIn, Math.min(heightMiddleIn, heightRightIn));
    }
}
