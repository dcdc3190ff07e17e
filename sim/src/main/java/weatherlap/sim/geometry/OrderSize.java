package weatherlap.sim.geometry;

import weatherlap.sim.Check;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Sightline;
import weatherlap.sim.house.Opening;
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
 * @param sightline row of the unit
 */
public record OrderSize(
        Method method,
        double openingWidthIn,
        double openingHeightIn,
        int units,
        double widthIn,
        double heightIn,
        double overallWidthIn,
        Squareness squareness,
        Sightline sightline) {
    public OrderSize {
        Check.within("units", units, 1, 4);
        Check.notNegative("order width", widthIn);
        Check.notNegative("order height", heightIn);
        Check.notNegative("overall width", overallWidthIn);
    }

    public static OrderSize of(Opening opening, Method method, Assumptions assumptions) {
        Scenario scenario = assumptions.scenario();
        Sightline sightline = assumptions.sightline(method, opening);
        Squareness squareness = Squareness.of(opening, scenario);
        OrderAmounts amounts = OrderAmounts.of(opening, method, sightline, assumptions, squareness);
        double widthIn = amounts.width().value();
        // units of an assembly stand post to post, others in the cells of the old frame
        double pitchIn =
                (method.keepsOldFrame() ? Math.max(0, amounts.cellWidth().value()) : widthIn)
                        + scenario.value(Scalar.MULL_POST_IN);
        return new OrderSize(
                method,
                Math.max(0, amounts.insideWidth().value()),
                Math.max(0, amounts.insideHeight().value()),
                opening.units(),
                widthIn,
                amounts.height().value(),
                widthIn > 0 ? widthIn + (opening.units() - 1) * pitchIn : 0,
                squareness,
                sightline);
    }

    /** Whether a unit goes in at all. */
    public boolean fits() {
        return widthIn > 0 && heightIn > 0;
    }

    /** Width + height of every unit, added up, in. */
    double unitedInches() {
        return units * (widthIn + heightIn);
    }

    /** The largest multiple of the step that is not above the length; a billionth of a step is rounding noise. */
    static double roundDown(double lengthIn, double stepIn) {
        return Math.max(0, Math.min(lengthIn, Math.floor(lengthIn / stepIn + 1e-9) * stepIn));
    }
}
