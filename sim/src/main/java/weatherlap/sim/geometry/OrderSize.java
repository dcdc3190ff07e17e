package weatherlap.sim.geometry;

import weatherlap.sim.Check;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Sightline;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Readings;
import weatherlap.sim.method.Method;

/**
 * The size to order. With the measured frame W × H (the smallest readings, and never more than the frame), n mulled units, post p:
 *
 * <pre>
 *   frame out     rough opening R = W + gap, H + gap
 *                 unit = ⌊((R − deduction) − (n − 1)p)/n⌋ × ⌊R − deduction⌋, posts between: one assembly
 *   frame stays   each cell of the old frame (W − (n − 1)p)/n, less both jambs and the lean of the jambs; H less head and sill
 *                 unit = ⌊cell − deduction⌋: n units, and the old posts stay
 * </pre>
 *
 * ⌊ ⌋ rounds down to {@code order_step_in}. Gap, deductions and step: general measuring guides; a rough opening of a house that stands is
 * seen only when the old unit is out, so such a size is checked again before it is ordered or set.
 *
 * @param openingWidthIn the opening that one unit goes into, or the assembly where the frame is out
 * @param openingHeightIn likewise
 * @param units in the opening
 * @param widthIn of one unit, 0 where none fits
 * @param heightIn likewise
 * @param overallWidthIn first unit's left to last unit's right: of the assembly where it is one
 * @param squareness of the readings
 */
public record OrderSize(
        Method method,
        double openingWidthIn,
        double openingHeightIn,
        int units,
        double widthIn,
        double heightIn,
        double overallWidthIn,
        Squareness squareness) {
    public OrderSize {
        Check.within("units", units, 1, 4);
        Check.notNegative("order width", widthIn);
        Check.notNegative("order height", heightIn);
        Check.notNegative("overall width", overallWidthIn);
    }

    public static OrderSize of(Opening opening, Method method, Assumptions assumptions) {
        return method.keepsOldFrame()
                ? insideOldFrame(opening, method, assumptions)
                : inRoughOpening(opening, method, assumptions);
    }

    /** Whether a unit goes in at all. */
    public boolean fits() {
        return widthIn > 0 && heightIn > 0;
    }

    /** Width + height of every unit, added up, in. */
    double unitedInches() {
        return units * (widthIn + heightIn);
    }

    private static OrderSize inRoughOpening(Opening opening, Method method, Assumptions assumptions) {
        Scenario scenario = assumptions.scenario();
        Sightline sightline = assumptions.sightline(method, opening);
        double gapIn = scenario.value(Scalar.ROUGH_GAP_IN);
        double postIn = scenario.value(Scalar.MULL_POST_IN);
        double roughWidthIn = measuredWidthIn(opening) + gapIn;
        double roughHeightIn = measuredHeightIn(opening) + gapIn;
        double stepIn = scenario.value(Scalar.ORDER_STEP_IN);
        double shareIn =
                (roughWidthIn - sightline.widthDeductionIn() - (opening.units() - 1) * postIn) / opening.units();
        double widthIn = roundDown(shareIn, stepIn);
        double heightIn = roundDown(roughHeightIn - sightline.heightDeductionIn(), stepIn);
        double overallIn = widthIn > 0 ? opening.units() * widthIn + (opening.units() - 1) * postIn : 0;
        return new OrderSize(
                method,
                roughWidthIn,
                roughHeightIn,
                opening.units(),
                widthIn,
                heightIn,
                overallIn,
                squareness(opening, scenario));
    }

    private static OrderSize insideOldFrame(Opening opening, Method method, Assumptions assumptions) {
        Scenario scenario = assumptions.scenario();
        Sightline old = assumptions.existingSightline(opening);
        Sightline sightline = assumptions.sightline(method, opening);
        Squareness squareness = squareness(opening, scenario);
        double postIn = scenario.value(Scalar.MULL_POST_IN);
        double cellIn = Mulled.cellWidthIn(measuredWidthIn(opening), opening.units(), postIn);
        double insideWidthIn = Math.max(0, cellIn - 2 * old.jambIn());
        double insideHeightIn = Math.max(0, measuredHeightIn(opening) - old.headIn() - old.sillIn());
        double stepIn = scenario.value(Scalar.ORDER_STEP_IN);
        double widthIn = roundDown(insideWidthIn - squareness.outOfPlumbIn() - sightline.widthDeductionIn(), stepIn);
        double heightIn = roundDown(insideHeightIn - sightline.heightDeductionIn(), stepIn);
        return new OrderSize(
                method,
                insideWidthIn,
                insideHeightIn,
                opening.units(),
                widthIn,
                heightIn,
                widthIn > 0 ? widthIn + (opening.units() - 1) * (cellIn + postIn) : 0,
                squareness);
    }

    private static Squareness squareness(Opening opening, Scenario scenario) {
        return opening.readings()
                .map(readings -> Squareness.of(readings, scenario))
                .orElse(Squareness.UNREAD);
    }

    /** Smallest width read, and never more than the frame, in. */
    static double measuredWidthIn(Opening opening) {
        double readIn = opening.readings()
                .map(Readings::smallestWidthIn)
                .orElse(opening.frame().widthIn());
        return Math.min(readIn, opening.frame().widthIn());
    }

    /** Smallest height read, and never more than the frame, in. */
    static double measuredHeightIn(Opening opening) {
        double readIn = opening.readings()
                .map(Readings::smallestHeightIn)
                .orElse(opening.frame().heightIn());
        return Math.min(readIn, opening.frame().heightIn());
    }

    /** The largest multiple of the step that is not above the length; a billionth of a step is rounding noise. */
    static double roundDown(double lengthIn, double stepIn) {
        return Math.max(0, Math.min(lengthIn, Math.floor(lengthIn / stepIn + 1e-9) * stepIn));
    }
}
