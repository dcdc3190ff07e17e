package weatherlap.analysis.choice;

import java.util.OptionalDouble;
import weatherlap.sim.price.Pricing;
import weatherlap.sim.run.MethodResult;
import weatherlap.sim.run.Results;

/**
 * Where the answer for a whole portfolio turns, each cause alone. The gap in horizon cost, full-flange less insert, a house, is
 *
 * <pre>  gap = price gap + repairs gap + glass gap</pre>
 *
 * and the last two are proportional to what a repair costs and to what glass is worth, so the value at which the gap is zero is exact:
 * the value assumed × −(the other two) / its own. Repairs under the warranty, which the family pays within the price, are no part of
 * the price gap here but of that of the repairs.
 *
 * @param priceGapUsd mean of a house, full-flange less insert
 * @param damageGapUsd likewise, expected repairs of leak damage; usually negative
 * @param glassGapUsd likewise, worth of the glass lost; usually negative
 */
public record TippingPoints(double priceGapUsd, double damageGapUsd, double glassGapUsd) {

    /**
     * Of all houses.
     *
     * @param pricing that made the prices
     * @throws IllegalArgumentException for a portfolio without houses
     */
    public static TippingPoints of(Results results, Pricing pricing) {
        if (results.houses().isEmpty()) {
            throw new IllegalArgumentException("The portfolio must hold a house.");
        }
        double price = 0;
        double damage = 0;
        double glass = 0;
        for (var house : results.houses()) {
            MethodResult full = house.first();
            MethodResult insert = house.second();
            double warranty = pricing.chargedUsd(full.warrantyUsd()) - pricing.chargedUsd(insert.warrantyUsd());
            price += full.priceUsd() - insert.priceUsd() - warranty;
            damage += full.expectedDamageUsd() - insert.expectedDamageUsd() + warranty;
            glass += full.glassValueUsd() - insert.glassValueUsd();
        }
        int houses = results.houses().size();
        return new TippingPoints(price / houses, damage / houses, glass / houses);
    }

    /** Full-flange less insert, USD a house: below 0 full-flange is the cheaper. */
    public double gapUsd() {
        return priceGapUsd + damageGapUsd + glassGapUsd;
    }

    /** Times the repair cost assumed at which both cost the same; empty where no such cost is. */
    public OptionalDouble repairFactor() {
        return factor(damageGapUsd);
    }

    /** Times the worth of glass assumed at which both cost the same; empty where no such worth is. */
    public OptionalDouble glassFactor() {
        return factor(glassGapUsd);
    }

    private OptionalDouble factor(double own) {
        double factor = -(gapUsd() - own) / own;
        return factor > 0 && factor < Double.POSITIVE_INFINITY ? OptionalDouble.of(factor) : OptionalDouble.empty();
    }
}
