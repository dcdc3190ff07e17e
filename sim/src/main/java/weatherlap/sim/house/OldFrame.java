package weatherlap.sim.house;

import weatherlap.sim.Check;

/**
 * The frame that stands in the wall.
 *
 * @param widthIn outside to outside, in., 8 to 144
 * @param heightIn likewise
 * @param material of the unit in it, too
 * @param condition as somebody saw it
 */
public record OldFrame(double widthIn, double heightIn, FrameMaterial material, FrameCondition condition) {
    public OldFrame {
        Check.within("frame width", widthIn, 8, 144);
        Check.within("frame height", heightIn, 8, 144);
    }

    public double areaIn2() {
        return widthIn * heightIn;
    }

    public boolean rotten() {
        return condition == FrameCondition.ROTTEN;
    }
}
