package weatherlap.sim.geometry;

import weatherlap.sim.Check;
import weatherlap.sim.Units;

/**
 * A rectangle on the face of a wall seen from outside, in. In the frame of an opening the origin is the lower left corner of the
 * existing frame; in the frame of a wall it is its left corner at grade.
 *
 * @param leftIn x of the left edge
 * @param bottomIn y of the lower edge
 * @param widthIn 0 or above
 * @param heightIn 0 or above
 */
public record Rect(double leftIn, double bottomIn, double widthIn, double heightIn) {
    public Rect {
        Check.finite("left edge", leftIn);
        Check.finite("lower edge", bottomIn);
        Check.notNegative("width", widthIn);
        Check.notNegative("height", heightIn);
    }

    static final Rect EMPTY = new Rect(0, 0, 0, 0);

    /** By its edges; a rectangle whose edges cross is empty, at the lower of the two. */
    static Rect between(double leftIn, double bottomIn, double rightIn, double topIn) {
        return new Rect(leftIn, bottomIn, Math.max(0, rightIn - leftIn), Math.max(0, topIn - bottomIn));
    }

    public double rightIn() {
        return leftIn + widthIn;
    }

    public double topIn() {
        return bottomIn + heightIn;
    }

    public double areaIn2() {
        return widthIn * heightIn;
    }

    public double areaFt2() {
        return Units.squareInchesToSquareFeet(areaIn2());
    }

    public double perimeterIn() {
        return 2 * (widthIn + heightIn);
    }

    public boolean isEmpty() {
        return widthIn <= 0 || heightIn <= 0;
    }

    /** What is left inside when the edges come in; empty where they meet. */
    Rect inset(double sideIn, double topIn, double bottomIn) {
        return between(leftIn + sideIn, this.bottomIn + bottomIn, rightIn() - sideIn, topIn() - topIn);
    }

    /** A rectangle of this size or less, in the middle of this one. */
    Rect centred(double innerWidthIn, double innerHeightIn) {
        return new Rect(
                leftIn + (widthIn - innerWidthIn) / 2,
                bottomIn + (heightIn - innerHeightIn) / 2,
                innerWidthIn,
                innerHeightIn);
    }
}
