package weatherlap.sim.geometry;

import java.util.List;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Sightline;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.Opening;

/**
 * Sizes of units as trees: see {@link OrderSize} for the equations.
 *
 * @param old row of the existing unit
 * @param row of the new one
 */
record OrderExplanation(Opening opening, OrderSize order, Sightline old, Sightline row, Scenario scenario) {

    Amount existingWidth() {
        return cell(Amount.given("frame width", opening.frame().widthIn(), "in."));
    }

    Amount existingHeight() {
        return Amount.given("frame height", opening.frame().heightIn(), "in.");
    }

    Amount width() {
        Amount measured = Amount.given("width measured", OrderSize.measuredWidthIn(opening), "in.");
        Amount deduction = Amount.given("deduction", row.widthDeductionIn(), "in.", row.origin());
        Amount exact = !order.method().keepsOldFrame()
                ? cell(Amount.difference("assembly", "in.", rough(measured), deduction))
                : Amount.difference(
                        "width less jambs, lean and deduction",
                        "in.",
                        cell(measured),
                        Amount.sum(
                                "left free",
                                "in.",
                                List.of(
                                        Amount.given("old left jamb", old.jambIn(), "in.", old.origin()),
                                        Amount.given("old right jamb", old.jambIn(), "in.", old.origin()),
                                        Amount.given(
                                                "lean of the jambs",
                                                order.squareness().outOfPlumbIn(),
                                                "in."),
                                        deduction)));
        return rounded("order width", order.widthIn(), exact);
    }

    Amount height() {
        Amount measured = Amount.given("height measured", OrderSize.measuredHeightIn(opening), "in.");
        Amount deduction = Amount.given("deduction", row.heightDeductionIn(), "in.", row.origin());
        Amount exact = !order.method().keepsOldFrame()
                ? Amount.difference("height less deduction", "in.", rough(measured), deduction)
                : Amount.difference(
                        "height less head, sill and deduction",
                        "in.",
                        measured,
                        Amount.sum(
                                "left free",
                                "in.",
                                List.of(
                                        Amount.given("old head", old.headIn(), "in.", old.origin()),
                                        Amount.given("old sill", old.sillIn(), "in.", old.origin()),
                                        deduction)));
        return rounded("order height", order.heightIn(), exact);
    }

    private Amount rough(Amount measured) {
        return Amount.sum("rough opening", "in.", List.of(measured, scenario.amount(Scalar.ROUGH_GAP_IN)));
    }

    private Amount rounded(String name, double valueIn, Amount exact) {
        return Amount.formula(
                name + ", rounded down to the step",
                valueIn,
                "in.",
                List.of(exact, scenario.amount(Scalar.ORDER_STEP_IN)));
    }

    /** One of several units side by side, with posts between. */
    private Amount cell(Amount whole) {
        int units = opening.units();
        if (units == 1) {
            return whole;
        }
        Amount posts = Amount.product(
                "posts", "in.", List.of(Amount.given("posts", units - 1, ""), scenario.amount(Scalar.MULL_POST_IN)));
        return Amount.product(
                "width of a unit",
                "in.",
                List.of(
                        Amount.difference("units together", "in.", whole, posts),
                        Amount.given("share of one unit", 1.0 / units, "")));
    }
}
