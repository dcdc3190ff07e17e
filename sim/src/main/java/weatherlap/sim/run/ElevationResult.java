package weatherlap.sim.run;

import weatherlap.sim.house.Elevation;
import weatherlap.sim.method.Method;

/**
 * One elevation with openings under one method.
 *
 * @param panelsDown siding panels taken down and put back, the elevation being done at once; 0 for an insert
 * @param drivingRainLitresPerM2Year mean over its openings, with the eave, L/m² a year
 * @param leakScore chance of leak damage at any of its openings within the horizon, percent
 * @param labourMinutesMean person-minutes at its openings and on the wall they share
 * @param horizonCostUsdMean its share of the house's horizon cost: price by its own cost, damage and glass
 */
public record ElevationResult(
        Elevation elevation,
        Method method,
        int panelsDown,
        double drivingRainLitresPerM2Year,
        double leakScore,
        double labourMinutesMean,
        double horizonCostUsdMean) {}
