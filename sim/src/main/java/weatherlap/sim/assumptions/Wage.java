package weatherlap.sim.assumptions;

import weatherlap.sim.Check;
import weatherlap.sim.explain.Origin;

/**
 * What an hour of a person costs.
 *
 * @param role such as carpenter or helper
 * @param usdPerHour paid
 * @param burdenFraction taxes, insurance and benefits on top, as a fraction of the wage
 */
public record Wage(String region, String role, double usdPerHour, double burdenFraction, Origin origin) {
    public Wage {
        Check.text("region", region);
        Check.text("role", role);
        Check.positive("wage", usdPerHour);
        Check.within("burden", burdenFraction, 0, 5);
    }

    /** The same at another wage. */
    public Wage withUsdPerHour(double changed) {
        return new Wage(region, role, changed, burdenFraction, origin);
    }
}
