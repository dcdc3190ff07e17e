package weatherlap.sim.assumptions;

import java.util.OptionalDouble;
import weatherlap.sim.Check;
import weatherlap.sim.explain.Origin;
import weatherlap.sim.house.Operation;
import weatherlap.sim.method.Method;

/**
 * What a new unit costs the shop, base + rate × united inches (width + height), USD and USD/in., and what it is rated for.
 *
 * @param ratingPsf performance grade that its maker states, psf; empty: not known
 */
public record UnitPrice(
        Method method,
        Operation operation,
        double baseUsd,
        double usdPerUnitedInch,
        OptionalDouble ratingPsf,
        Origin origin) {
    public UnitPrice {
        ratingPsf.ifPresent(psf -> Check.positive("rating", psf));
        Check.notNegative("base price", baseUsd);
        Check.notNegative("price per united inch", usdPerUnitedInch);
    }

    /** Of a unit whose rating is not known. */
    public UnitPrice(Method method, Operation operation, double baseUsd, double usdPerUnitedInch, Origin origin) {
        this(method, operation, baseUsd, usdPerUnitedInch, OptionalDouble.empty(), origin);
    }

    /** The same at a multiple of the price. */
    public UnitPrice times(double factor) {
        return new UnitPrice(method, operation, baseUsd * factor, usdPerUnitedInch * factor, ratingPsf, origin);
    }

    /** The same at another base price. */
    public UnitPrice withBaseUsd(double changed) {
        return new UnitPrice(method, operation, changed, usdPerUnitedInch, ratingPsf, origin);
    }
}
