package weatherlap.analysis.choice;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import weatherlap.sim.assumptions.Method;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.FrameCondition;
import weatherlap.sim.run.ElevationResult;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.OpeningResult;

/**
 * The limits of a house, wall by wall.
 *
 * @param limits by elevation id in table order, then by method: what closes the method there
 * @param atRisk over the risk limit with both methods
 */
record Walls(Map<String, Map<Method, Set<Limit>>> limits, boolean atRisk) {

    static Walls of(HouseResult result, double riskLimit) {
        Map<Method, Boolean> risky = new EnumMap<>(Method.class);
        for (Method method : Method.values()) {
            risky.put(method, result.method(method).leakProbability() > riskLimit);
        }
        Map<String, Map<Method, Set<Limit>>> limits = new LinkedHashMap<>();
        for (Elevation elevation : result.house().elevations()) {
            if (!elevation.openings().isEmpty()) {
                limits.put(elevation.id(), ofWall(result, elevation, risky));
            }
        }
        return new Walls(limits, risky.get(Method.FULL_FLANGE) && risky.get(Method.INSERT));
    }

    private static Map<Method, Set<Limit>> ofWall(HouseResult result, Elevation elevation, Map<Method, Boolean> risky) {
        Map<Method, EnumSet<Limit>> broken = new EnumMap<>(Method.class);
        for (Method method : Method.values()) {
            EnumSet<Limit> own = EnumSet.noneOf(Limit.class);
            if (flagged(result, elevation, method, "escape_lost")) {
                own.add(Limit.ESCAPE_LOST);
            }
            if (method == Method.INSERT
                    && elevation.openings().stream().anyMatch(o -> o.frameCondition() == FrameCondition.ROTTEN)) {
                own.add(Limit.ROTTEN_FRAME);
            }
            if (flagged(result, elevation, method, "no_unit_fits")) {
                own.add(Limit.NO_UNIT_FITS);
            }
            if (risky.get(method)) {
                own.add(Limit.RISK_LIMIT);
            }
            broken.put(method, own);
        }
        Map<Method, Set<Limit>> closed = new EnumMap<>(Method.class);
        for (Method method : Method.values()) {
            Set<Limit> own = EnumSet.copyOf(broken.get(method));
            own.removeAll(broken.get(method.other()));
            closed.put(method, own);
        }
        return closed;
    }

    private static boolean flagged(HouseResult result, Elevation elevation, Method method, String flag) {
        return result.openings().stream()
                .filter(o -> o.method() == method && o.elevationId().equals(elevation.id()))
                .map(OpeningResult::codeFlags)
                .anyMatch(flags -> flags.contains(flag));
    }

    /** Closed at a wall: something closes it there and nothing closes the other. */
    private boolean closedAt(String elevation, Method method) {
        Map<Method, Set<Limit>> wall = limits.get(elevation);
        return !wall.get(method).isEmpty() && wall.get(method.other()).isEmpty();
    }

    boolean closedAllOver(Method method) {
        return !limits.isEmpty() && limits.keySet().stream().allMatch(wall -> closedAt(wall, method));
    }

    Map<Method, Set<Limit>> closed() {
        Map<Method, Set<Limit>> all = new EnumMap<>(Method.class);
        for (Method method : Method.values()) {
            Set<Limit> own = EnumSet.noneOf(Limit.class);
            limits.values().forEach(wall -> own.addAll(wall.get(method)));
            all.put(method, Collections.unmodifiableSet(own));
        }
        return all;
    }

    Map<String, Method> wherever(Method method) {
        Map<String, Method> plan = new LinkedHashMap<>();
        limits.keySet().forEach(wall -> plan.put(wall, closedAt(wall, method) ? method.other() : method));
        return plan;
    }

    /** The cheaper method of every wall that is open there. */
    Map<String, Method> cheapest(HouseResult result) {
        Map<String, Method> plan = new LinkedHashMap<>();
        for (String wall : limits.keySet()) {
            double flange = horizonUsd(result.elevations(), wall, Method.FULL_FLANGE);
            double insert = horizonUsd(result.elevations(), wall, Method.INSERT);
            Method cheaper = flange < insert ? Method.FULL_FLANGE : Method.INSERT;
            plan.put(wall, closedAt(wall, cheaper) ? cheaper.other() : cheaper);
        }
        return plan;
    }

    static double horizonUsd(List<ElevationResult> elevations, String wall, Method method) {
        return elevations.stream()
                .filter(e -> e.elevationId().equals(wall) && e.method() == method)
                .mapToDouble(ElevationResult::horizonCostUsdMean)
                .findFirst()
                .orElseThrow();
    }
}
