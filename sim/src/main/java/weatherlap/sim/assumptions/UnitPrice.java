package weatherlap.sim.assumptions;

import weatherlap.sim.Check;
import weatherlap.sim.explain.Origin;
import weatherlap.sim.house.Operation;
import weatherlap.sim.method.Method;

/** What a new unit costs the shop: base + rate × united inches (width + height). USD and USD/in. */
public record UnitPrice(Method method, Operation operation, double baseUsd, double usdPerUnitedInch, Origin origin) {
    public UnitPrice {
        Check.notNegative("base price", baseUsd);
        Check.notNegative("price per united inch", usdPerUnitedInch);
    }

    /** The same at a multiple of the price. */
    public UnitPrice times(double factor) {
        return new UnitPrice(method, operation, baseUsd * factor, usdPerUnitedInch * factor, origin);
    }

    /** The same at another base price. */
    public UnitPrice withBaseUsd(double changed) {
        return new UnitPrice(method, operation, changed, usdPerUnitedInch, origin);
    }
}
