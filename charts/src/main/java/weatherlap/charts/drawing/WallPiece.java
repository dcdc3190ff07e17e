package weatherlap.charts.drawing;

import weatherlap.sim.Check;

/**
 * A rectangle of a window seen from outside, in.
 *
 * @param kind what it is
 * @param leftIn its left edge, from the left edge of the opening
 * @param bottomIn its lower edge, from the lower edge of the opening
 * @param widthIn 0 or above
 * @param heightIn 0 or above
 */
public record WallPiece(Kind kind, double leftIn, double bottomIn, double widthIn, double heightIn) {

    /** What a rectangle is, in the order in which they are laid over one another. */
    public enum Kind {
        /** Between the frame and what it stands in, under trim. */
        GAP,
        /** Of the unit that stands, where an insert leaves it. */
        OLD_FRAME,
        FRAME,
        MULL_POST,
        SASH,
        GLASS
    }

    public WallPiece {
        Check.finite("left edge", leftIn);
        Check.finite("lower edge", bottomIn);
        Check.notNegative("width", widthIn);
        Check.notNegative("height", heightIn);
    }

    double rightIn() {
        return leftIn + widthIn;
    }

    double topIn() {
        return bottomIn + heightIn;
    }
}
