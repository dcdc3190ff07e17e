package weatherlap.analysis.plan;

import java.util.List;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.PlanParts;
import weatherlap.sim.run.PlanParts.Way;

/** What plans of one house come to, beside each other and wall by wall. */
public final class PlanSums {
    private PlanSums() {}

    /** Share of the draws in which the first costs the family less over the horizon than the second, 0 to 1. */
    public static double cheaper(PlanParts parts, Plan first, Plan second) {
        double[] one = PlanCost.horizonUsd(parts, first);
        double[] other = PlanCost.horizonUsd(parts, second);
        int less = 0;
        for (int d = 0; d < one.length; d++) {
            less += one[d] < other[d] ? 1 : 0;
        }
        return (double) less / one.length;
    }

    /** Openings at which leak damage is expected within the horizon: the sum of their chances, so that plans add up opening by opening. */
    public static double expectedLeaks(PlanParts parts, Plan plan) {
        return PlanCost.ways(parts.openings(), plan.byOpening()).stream()
                .mapToDouble(PlanSums::leaks)
                .sum();
    }

    /** Likewise of one opening: its chance, 0 to 1. */
    public static double leaks(Way way) {
        return 1 - PlanSearch.mean(way.dry());
    }

    /** Mean of the leak damage that the family pays within the horizon, USD. */
    public static double damageUsd(PlanParts parts, Plan plan) {
        return PlanCost.ways(parts.openings(), plan.byOpening()).stream()
                .mapToDouble(Way::damageUsd)
                .sum();
    }

    /** What a wall adds to the price of a plan that does its openings by these methods, USD; what the house bears once is apart. */
    public static double wallUsd(PlanParts.Wall wall, List<Method> methods) {
        return PlanCost.wallUsd(wall, methods);
    }
}
