package weatherlap.analysis.choice;

import java.util.Map;
import weatherlap.sim.assumptions.Method;
import weatherlap.sim.run.ElevationResult;
import weatherlap.sim.run.HouseResult;

/**
 * What a plan costs the family.
 *
 * <pre>
 *   cost = Σ_wall share(wall, method) + Σ_method used (1 − f) set-up,   f = Σ share over its walls / Σ share over all walls
 * </pre>
 *
 * A share of a wall carries the fraction f of the method's set-up; one method alone carries all of it.
 *
 * @param setupUsd by method
 */
record PlanCost(HouseResult result, Map<Method, Double> setupUsd) {

    Plan plan(Map<String, Method> byElevation) {
        double cost = 0;
        for (Method method : Method.values()) {
            double own = 0;
            double all = 0;
            for (ElevationResult wall : result.elevations()) {
                if (wall.method() == method) {
                    all += wall.horizonCostUsdMean();
                    own += byElevation.get(wall.elevationId()) == method ? wall.horizonCostUsdMean() : 0;
                }
            }
            if (byElevation.containsValue(method)) {
                cost += own + (all == 0 ? 0 : 1 - own / all) * setupUsd.get(method);
            }
        }
        return new Plan(byElevation, cost);
    }
}
