package weatherlap.sim.price;

import java.util.List;
import weatherlap.sim.method.Method;

/**
 * What the price of a house by one method, the shop's profit and the family's cost are put together from, with crews and horizons other
 * than those of the run too; wages, margins and the worth of glass are not in it.
 *
 * @param crews by their people, rising
 * @param horizons by their years, rising
 * @param openingMaterialUsd material of each opening alone, USD, in table order over the walls; not to be changed
 * @param openingUsd labour and material of each opening alone as the run has them, USD: what its share of the price goes by; likewise
 */
@SuppressWarnings("ArrayRecordComponent") // kept for every house shown; compared by nobody
public record JobParts(
        Method method, List<CrewWork> crews, List<Repairs> horizons, double[] openingMaterialUsd, double[] openingUsd) {
    public JobParts {
        crews = List.copyOf(crews);
        horizons = List.copyOf(horizons);
    }

    /**
     * The work by a crew.
     *
     * @param people in it, 1 or more
     * @param personMinutes mean, travel in
     * @param days working days
     * @param materialUsd units, items in whole packages, permit and tipping
     * @param openingMinutes person-minutes at each opening alone; not to be changed
     */
    @SuppressWarnings("ArrayRecordComponent") // as above
    public record CrewWork(int people, double personMinutes, int days, double materialUsd, double[] openingMinutes) {}

    /**
     * Repairs of leaks, at present worth.
     *
     * @param years of the horizon, 1 or more
     * @param shopUsd mean of those under the warranty, USD
     * @param familyUsd mean of those that the family pays within the horizon, USD
     */
    public record Repairs(int years, double shopUsd, double familyUsd) {}
}
