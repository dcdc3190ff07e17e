package weatherlap.sim.assumptions;

import weatherlap.sim.Check;
import weatherlap.sim.explain.Origin;
import weatherlap.sim.house.Operation;

/** What a new unit costs the shop: base + rate × united inches (width + height). USD and USD/in. */
public record UnitPrice(Method method, Operation operation, double baseUsd, double usdPerUnitedInch, Origin origin) {
    public UnitPrice {
        Check.notNegative("base price", baseUsd);
        Check.notNegative("price per united inch", usdPerUnitedInch);
    }
}
