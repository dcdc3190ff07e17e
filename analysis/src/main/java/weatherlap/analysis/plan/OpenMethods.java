package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.PlanParts.Part;
import weatherlap.sim.run.PlanParts.Way;

/**
 * Which methods an opening is open to. The limits are asked in their order; each closes the methods that break it, unless no method
 * that is still open keeps it.
 *
 * @param open methods open here, one or more
 * @param closed for each other method, the limits that it breaks and those open keep
 */
record OpenMethods(Set<Method> open, Map<Method, Set<Limit>> closed) {
    static OpenMethods of(Part part) {
        Map<Method, Set<Limit>> broken = new EnumMap<>(Method.class);
        boolean allKept = true;
        for (Way way : part.ways()) {
            Set<Limit> limits = Limit.brokenBy(part.opening(), way);
            broken.put(way.method(), limits);
            allKept &= limits.isEmpty();
        }
        if (allKept) {
            return new OpenMethods(Collections.unmodifiableSet(broken.keySet()), Map.of());
        }
        Set<Method> open = open(broken);
        Map<Method, Set<Limit>> closed = new EnumMap<>(Method.class);
        broken.forEach((method, limits) -> {
            if (!open.contains(method)) {
                open.forEach(kept -> limits.removeAll(broken.get(kept)));
                closed.put(method, Collections.unmodifiableSet(limits));
            }
        });
        return new OpenMethods(Collections.unmodifiableSet(open), Collections.unmodifiableMap(closed));
    }

    private static Set<Method> open(Map<Method, Set<Limit>> broken) {
        Set<Method> open = EnumSet.copyOf(broken.keySet());
        for (Limit limit : Limit.values()) {
            Set<Method> keep = EnumSet.noneOf(Method.class);
            for (Method method : open) {
                if (!broken.get(method).contains(limit)) {
                    keep.add(method);
                }
            }
            open = keep.isEmpty() ? open : keep;
        }
        return open;
    }

    /** The ways of doing the opening that are open. */
    List<Way> ways(Part part) {
        List<Way> ways = new ArrayList<>(open.size());
        for (Way way : part.ways()) {
            if (open.contains(way.method())) {
                ways.add(way);
            }
        }
        return ways;
    }
}
