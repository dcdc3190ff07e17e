package weatherlap.analysis.plan;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;

/**
 * Why the family's plan does one opening by its method, from what the house would come to by another method at this opening alone.
 *
 * @param closed by closed method, what closes it at this opening
 * @param swap with the open method that would come cheapest here; empty where no other is open
 * @param sidingUsd what the siding of this opening would add to the price, were it not down for others anyway; 0 or more
 * @param riskLimit largest acceptable chance of leak damage in the house, 0 to 1
 */
public record PlanReason(
        Elevation elevation,
        Opening opening,
        Method method,
        Why why,
        Map<Method, Set<Limit>> closed,
        Optional<Swap> swap,
        double sidingUsd,
        double riskLimit) {
    public PlanReason {
        closed = closed.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(closed));
    }

    /** In the order in which they are asked. */
    public enum Why {
        /** No other method is open here. */
        ONLY_ONE,
        /** Nobody's plan keeps the limit of leak damage; another method here would come to a higher chance still. */
        LEAST_RISK,
        /** Another method would cost less and break the limit of leak damage. */
        KEEPS_LIMIT,
        /** Another method would cost more, but less if this opening's siding were not down for others. */
        SHARES_SIDING,
        /** Another method would cost as much or more. */
        CHEAPER,
        /** Another method here would cost less: the search was cut off before it was found. */
        BEST_FOUND
    }

    /**
     * The house with another method at one opening.
     *
     * @param moreUsd horizon cost less that of the plan, mean; negative where it would cost less
     * @param planLeakProbability of the plan itself, 0 to 1
     * @param leakProbability of the house so done, 0 to 1
     */
    public record Swap(Method method, double moreUsd, double planLeakProbability, double leakProbability) {}
}
