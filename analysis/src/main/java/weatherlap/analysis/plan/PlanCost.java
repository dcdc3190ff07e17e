package weatherlap.analysis.plan;

import java.util.Map;
import weatherlap.sim.method.Method;
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
 */
final class PlanCost {
    private PlanCost() {}

    /** @param byElevation a method for every wall with openings */
    static Plan plan(HouseResult result, Map<String, Method> byElevation) {
        double cost = 0;
        for (Method method : Method.values()) {
            double own = 0;
            double all = 0;
            for (ElevationResult wall : result.elevations()) {
                if (wall.method() == method) {
                    all += wall.horizonCostUsdMean();
                    own += byElevation.get(wall.elevation().id()) == method ? wall.horizonCostUsdMean() : 0;
                }
            }
            if (byElevation.containsValue(method)) {
                cost += own
                        + (all == 0 ? 0 : 1 - own / all) * result.method(method).setupUsd();
            }
        }
        return new Plan(byElevation, cost);
    }
}
