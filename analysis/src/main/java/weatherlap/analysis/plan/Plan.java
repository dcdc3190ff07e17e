package weatherlap.analysis.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weatherlap.sim.method.Method;

/**
 * A method for every wall with openings.
 *
 * @param byElevation method by elevation id, in table order
 * @param horizonCostUsd mean cost to the family over the horizon, USD
 */
public record Plan(Map<String, Method> byElevation, double horizonCostUsd) {
    public Plan {
        byElevation = Collections.unmodifiableMap(new LinkedHashMap<>(byElevation));
    }

    /** The one method of the whole house; empty where it is mixed. */
    public Optional<Method> single() {
        Set<Method> used = Set.copyOf(byElevation.values());
        return used.size() == 1 ? Optional.of(used.iterator().next()) : Optional.empty();
    }
}
