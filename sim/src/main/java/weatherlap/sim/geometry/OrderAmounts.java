package weatherlap.sim.geometry;

import java.util.List;
import java.util.function.ToDoubleFunction;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Sightline;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Readings;
import weatherlap.sim.method.Method;

/**
 * The equations of {@link OrderSize} as amounts that explain themselves, in.
 *
 * @param cellWidth one cell of the old frame; of the assembly where the frame is out
 * @param insideWidth what the unit goes into, not rounded: the rough opening, or a cell of the old frame
 * @param insideHeight likewise
 * @param width to order
 * @param height to order
 */
record OrderAmounts(Amount cellWidth, Amount insideWidth, Amount insideHeight, Amount width, Amount height) {
    /** @param row of the unit */
    static OrderAmounts of(
            Opening opening, Method method, Sightline row, Assumptions assumptions, Squareness squareness) {
        Amount width = given("width measured", smallest(opening.frame().widthIn(), opening, Readings::smallestWidthIn));
        Amount height =
                given("height measured", smallest(opening.frame().heightIn(), opening, Readings::smallestHeightIn));
        Amount narrower = Amount.given("deduction", row.widthDeductionIn(), "in.", row.origin());
        Amount lower = Amount.given("deduction", row.heightDeductionIn(), "in.", row.origin());
        return method.keepsOldFrame()
                ? insideOldFrame(opening, assumptions, width, height, narrower, lower, squareness)
                : inRoughOpening(opening, assumptions.scenario(), width, height, narrower, lower);
    }

    private static OrderAmounts inRoughOpening(
            Opening opening, Scenario scenario, Amount width, Amount height, Amount narrower, Amount lower) {
        Amount gap = scenario.amount(Scalar.ROUGH_GAP_IN);
        Amount roughWidth = Amount.sum("rough opening", "in.", List.of(width, gap));
        Amount roughHeight = Amount.sum("rough opening", "in.", List.of(height, gap));
        Amount cell = cell(Amount.difference("assembly", "in.", roughWidth, narrower), opening.units(), scenario);
        Amount exactHeight = Amount.difference("height less deduction", "in.", roughHeight, lower);
        return new OrderAmounts(
                cell,
                roughWidth,
                roughHeight,
                rounded("order width, rounded down to the step", cell, scenario),
                rounded("order height, rounded down to the step", exactHeight, scenario));
    }

    private static OrderAmounts insideOldFrame(
            Opening opening,
            Assumptions assumptions,
            Amount width,
            Amount height,
            Amount narrower,
            Amount lower,
            Squareness squareness) {
        Scenario scenario = assumptions.scenario();
        Sightline old = assumptions.existingSightline(opening);
        Amount cell = cell(width, opening.units(), scenario);
        Amount jamb = Amount.given("old jamb", old.jambIn(), "in.", old.origin());
        Amount insideWidth = Amount.difference(
                "width inside the old frame", "in.", cell, Amount.sum("both jambs", "in.", List.of(jamb, jamb)));
        Amount insideHeight = Amount.difference(
                "height inside the old frame",
                "in.",
                height,
                Amount.sum(
                        "head and sill",
                        "in.",
                        List.of(
                                Amount.given("old head", old.headIn(), "in.", old.origin()),
                                Amount.given("old sill", old.sillIn(), "in.", old.origin()))));
        Amount lean = given("lean of the jambs", squareness.outOfPlumbIn());
        Amount exactWidth = Amount.difference(
                "width less lean and deduction",
                "in.",
                insideWidth,
                Amount.sum("left free", "in.", List.of(lean, narrower)));
        return new OrderAmounts(
                cell,
                insideWidth,
                insideHeight,
                rounded("order width, rounded down to the step", exactWidth, scenario),
                rounded(
                        "order height, rounded down to the step",
                        Amount.difference("height less deduction", "in.", insideHeight, lower),
                        scenario));
    }

    /** One of several units side by side, with posts between. */
    static Amount cell(Amount whole, int units, Scenario scenario) {
        return units == 1
                ? whole
                : Amount.formula(
                        "width of a unit: its share of what the posts leave",
                        Mulled.cellWidthIn(whole.value(), units, scenario.value(Scalar.MULL_POST_IN)),
                        "in.",
                        List.of(whole, Amount.given("units", units, ""), scenario.amount(Scalar.MULL_POST_IN)));
    }

    /** The smallest reading, and never more than the frame. */
    private static double smallest(double frameIn, Opening opening, ToDoubleFunction<Readings> reading) {
        return opening.readings().isPresent()
                ? Math.min(frameIn, reading.applyAsDouble(opening.readings().get()))
                : frameIn;
    }

    private static Amount given(String name, double valueIn) {
        return Amount.given(name, valueIn, "in.");
    }

    private static Amount rounded(String name, Amount exact, Scenario scenario) {
        Amount step = scenario.amount(Scalar.ORDER_STEP_IN);
        return Amount.formula(name, OrderSize.roundDown(exact.value(), step.value()), "in.", List.of(exact, step));
    }
}
