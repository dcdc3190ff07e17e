package weatherlap.sim.material;

import java.util.List;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.UnitPrice;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;

/**
 * What the new unit of an opening costs the shop: each of n mulled lites is a unit of a nth of the width, priced base + rate ×
 * united inches (its width + height, from the frame that comes out).
 */
public final class NewUnit {
    private NewUnit() {}

    /** USD. */
    public static Amount cost(Assumptions assumptions, Method method, Opening opening) {
        UnitPrice price = assumptions.unitPrice(method, opening.newOperation());
        Amount units = Amount.given("units", opening.units(), "units");
        Amount base = Amount.product(
                "base price", "USD", List.of(units, Amount.given("base", price.baseUsd(), "USD", price.origin())));
        Amount size = Amount.product(
                "by united inches",
                "USD",
                List.of(
                        Amount.given("united inches", unitedInches(opening), "in."),
                        Amount.given("rate", price.usdPerUnitedInch(), "USD/in.", price.origin())));
        return Amount.sum("new unit", "USD", List.of(base, size));
    }

    /** The value of {@link #cost}, USD. */
    public static double usd(Assumptions assumptions, Method method, Opening opening) {
        UnitPrice price = assumptions.unitPrice(method, opening.newOperation());
        return opening.units() * price.baseUsd() + unitedInches(opening) * price.usdPerUnitedInch();
    }

    /** United inches of all units of an opening, in. */
    public static double unitedInches(Opening opening) {
        return opening.frame().widthIn() + opening.units() * opening.frame().heightIn();
    }
}
