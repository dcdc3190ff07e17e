package weatherlap.sim.price;

import weatherlap.sim.Check;

/**
 * What one house costs the shop, as expected.
 *
 * @param labourUsd wages with burden
 * @param materialUsd units, items, permit and tipping
 * @param warrantyUsd repairs of leaks that the warranty covers, at present worth: chance × cost
 * @param crewHours hours the crew is out
 */
public record JobCost(double labourUsd, double materialUsd, double warrantyUsd, double crewHours) {
    public JobCost {
        Check.notNegative("labour", labourUsd);
        Check.notNegative("material", materialUsd);
        Check.notNegative("repairs under the warranty", warrantyUsd);
        Check.notNegative("crew hours", crewHours);
    }

    /** USD, before overhead and reserves on the price. */
    public double directUsd() {
        return directUsd(labourUsd, materialUsd, warrantyUsd);
    }

    /** The same from its parts, for a draw. */
    public static double directUsd(double labourUsd, double materialUsd, double warrantyUsd) {
        return labourUsd + materialUsd + warrantyUsd;
    }
}
