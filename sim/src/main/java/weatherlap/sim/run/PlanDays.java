package weatherlap.sim.run;

import java.util.Map;
import weatherlap.sim.method.Method;

/**
 * Working days of the crew for any plan of a house, put together as its price is, so that walls add up: work that two methods share counts
 * once. A plan's own {@link weatherlap.sim.labour.DayPlan} packs walls into days anew, which no sum over walls does; these two lie about it.
 */
public final class PlanDays {
    private PlanDays() {}

    /**
     * The days of each method alone spread over its work: those of its day plan for a plan of one method.
     *
     * @param each the house by every method that it is open to
     * @return its parts with days in the place of dollars of price; nothing else of them is filled in
     */
    public static PlanParts spread(Map<Method, HouseTakeoff> each) {
        return PlanPricing.days(each, MethodShares::days);
    }

    /** Days that hold nothing but work: no plan is done in fewer; else as {@link #spread}. */
    public static PlanParts full(Map<Method, HouseTakeoff> each) {
        return PlanPricing.days(each, MethodShares::fullDays);
    }
}
