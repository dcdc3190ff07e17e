package weatherlap.sim.run;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weatherlap.sim.method.Method;

/**
 * One house wholly done by one method.
 *
 * @param glassExistingFt2 all openings today, ft²
 * @param labourHours person-hours, shared work counted once
 * @param labourMinutesByStep mean person-minutes of each labour step, by step id in table order
 * @param crewDays working days of the crew
 * @param materialUsd whole packages, units, permit and disposal, USD
 * @param priceUsd quoted from the mean cost
 * @param setupUsd the part of the price that one opening would bear as well as all: work once a house, the rest of opened packages
 * @param costUsd what the job costs the shop: labour, material, overhead, repairs under the warranty and service
 * @param costParts mean of each part of the cost, USD, by name in a fixed order
 * @param grossProfitUsd expected price less direct cost and service; overhead is paid out of it
 * @param lossProbability chance that the job costs more than the price
 * @param leakScore chance of leak damage at any opening within the horizon, percent
 * @param expectedDamageUsd mean of the leak repairs within the horizon that the family pays, discounted, USD; the shop's are in the price
 * @param glassValueUsd worth of the glass lost over the horizon, discounted, USD
 * @param horizonCostUsd price + expected damage + glass lost, USD; the band is over the causes that are not known, not over luck
 * @param flags short codes that concern the house
 */
public record MethodResult(
        Method method,
        double glassExistingFt2,
        double glassFt2,
        Summary labourHours,
        Map<String, Double> labourMinutesByStep,
        int crewDays,
        Summary materialUsd,
        double priceUsd,
        double setupUsd,
        Summary costUsd,
        Map<String, Double> costParts,
        double grossProfitUsd,
        double lossProbability,
        Summary leakScore,
        double expectedDamageUsd,
        double glassValueUsd,
        Summary horizonCostUsd,
        List<String> flags) {
    public MethodResult {
        labourMinutesByStep = Collections.unmodifiableMap(new LinkedHashMap<>(labourMinutesByStep));
        costParts = Collections.unmodifiableMap(new LinkedHashMap<>(costParts));
        flags = List.copyOf(flags);
    }

    /** Mean of the leak repairs that the shop pays, discounted, USD; a part of the price. */
    public double warrantyUsd() {
        return costParts.getOrDefault("warranty", 0.0);
    }

    public double glassLostFt2() {
        return glassExistingFt2 - glassFt2;
    }

    public double glassLostFraction() {
        return glassExistingFt2 == 0 ? 0 : glassLostFt2() / glassExistingFt2;
    }

    public double leakProbability() {
        return leakScore.mean() / 100;
    }

    public double grossProfitPerCrewDayUsd() {
        return crewDays == 0 ? 0 : grossProfitUsd / crewDays;
    }
}
