package weatherlap.analysis.plan;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.FrameCondition;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.ElevationResult;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.OpeningResult;

/**
 * The limits of a house, wall by wall.
 *
 * @param closed by elevation id in table order, then by method: what closes the method there; nothing where it is open
 * @param atRisk over the risk limit with both methods
 */
record Walls(Map<String, Map<Method, Set<Limit>>> closed, boolean atRisk) {

    static Walls of(HouseResult result, double riskLimit) {
        Set<Method> risky = EnumSet.allOf(Method.class);
        risky.removeIf(method -> result.method(method).leakProbability() <= riskLimit);
        Map<String, Map<Method, Set<Limit>>> closed = new LinkedHashMap<>();
        for (Elevation elevation : result.house().elevations()) {
            if (!elevation.openings().isEmpty()) {
                closed.put(elevation.id(), broken(elevation, risky));
            }
        }
        for (OpeningResult opening : result.openings()) {
            Set<Limit> broken = closed.get(opening.elevation().id()).get(opening.method());
            if (opening.codeFlags().contains("escape_lost")) {
                broken.add(Limit.ESCAPE_LOST);
            }
            if (opening.codeFlags().contains("no_unit_fits")) {
                broken.add(Limit.NO_UNIT_FITS);
            }
        }
        closed.replaceAll((wall, broken) -> closed(broken));
        return new Walls(Collections.unmodifiableMap(closed), risky.size() == Method.values().length);
    }

    /** What each method breaks whatever its units are. */
    private static Map<Method, Set<Limit>> broken(Elevation elevation, Set<Method> risky) {
        Map<Method, Set<Limit>> broken = new EnumMap<>(Method.class);
        for (Method method : Method.values()) {
            broken.put(method, risky.contains(method) ? EnumSet.of(Limit.RISK_LIMIT) : EnumSet.noneOf(Limit.class));
        }
        if (elevation.openings().stream().anyMatch(o -> o.frameCondition() == FrameCondition.ROTTEN)) {
            broken.get(Method.INSERT).add(Limit.ROTTEN_FRAME);
        }
        return broken;
    }

    /** What closes each method: the limits that it breaks and the other keeps, where the other has none such. */
    private static Map<Method, Set<Limit>> closed(Map<Method, Set<Limit>> broken) {
        Map<Method, Set<Limit>> own = new EnumMap<>(Method.class);
        broken.forEach((method, limits) -> own.put(method, without(limits, broken.get(method.other()))));
        boolean both = own.values().stream().noneMatch(Set::isEmpty);
        own.replaceAll((method, limits) -> both ? Set.of() : Collections.unmodifiableSet(limits));
        return Collections.unmodifiableMap(own);
    }

    private static Set<Limit> without(Set<Limit> limits, Set<Limit> others) {
        EnumSet<Limit> own = EnumSet.noneOf(Limit.class);
        own.addAll(limits);
        own.removeAll(others);
        return own;
    }

    private boolean isOpen(String wall, Method method) {
        return closed.get(wall).get(method).isEmpty();
    }

    boolean closedAllOver(Method method) {
        return !closed.isEmpty() && closed.keySet().stream().noneMatch(wall -> isOpen(wall, method));
    }

    Map<String, Method> wherever(Method method) {
        Map<String, Method> plan = new LinkedHashMap<>();
        closed.keySet().forEach(wall -> plan.put(wall, isOpen(wall, method) ? method : method.other()));
        return plan;
    }

    /** The cheaper method of every wall that is open there. */
    Map<String, Method> cheapest(HouseResult result) {
        Map<String, Method> plan = new LinkedHashMap<>();
        for (String wall : closed.keySet()) {
            double flange = horizonUsd(result.elevations(), wall, Method.FULL_FLANGE);
            double insert = horizonUsd(result.elevations(), wall, Method.INSERT);
            Method cheaper = flange < insert ? Method.FULL_FLANGE : Method.INSERT;
            plan.put(wall, isOpen(wall, cheaper) ? cheaper : cheaper.other());
        }
        return plan;
    }

    private static double horizonUsd(List<ElevationResult> elevations, String wall, Method method) {
        return elevations.stream()
                .filter(e -> e.elevation().id().equals(wall) && e.method() == method)
                .mapToDouble(ElevationResult::horizonCostUsdMean)
                .findFirst()
                .orElseThrow();
    }
}
