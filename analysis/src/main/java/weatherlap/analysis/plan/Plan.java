package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.PlanParts;

/**
 * A method for every opening of a house.
 *
 * @param walls those with openings, in table order
 * @param priceUsd what the shop asks
 * @param horizonCostUsd mean cost to the family over the horizon, USD
 * @param leakProbability chance of leak damage at any opening within the horizon, 0 to 1
 * @param lossBoundUsd most that a better plan within the same limits could save, USD; 0 where this is known to be the best
 */
public record Plan(
        List<WallPlan> walls, double priceUsd, double horizonCostUsd, double leakProbability, double lossBoundUsd) {
    public Plan {
        walls = List.copyOf(walls);
    }

    /**
     * A plan that somebody names.
     *
     * @param methods in table order over the walls, each open to the house
     */
    public static Plan of(PlanParts parts, List<Method> methods) {
        return PlanCost.plan(parts, methods, 0);
    }

    /**
     * A method for every opening of a wall.
     *
     * @param methods in the order of its openings
     */
    public record WallPlan(Elevation elevation, List<Method> methods) {
        public WallPlan {
            methods = List.copyOf(methods);
        }

        /** Whether the wall is all of a method, in part, or not: as tables have it. */
        public String uses(Method method) {
            return Plan.uses(Method.set(methods), method);
        }

        /** The one method of the wall; empty where it is mixed. */
        public Optional<Method> single() {
            return one(Method.set(methods));
        }
    }

    /** The plan of a wall with openings. */
    public WallPlan wall(Elevation elevation) {
        for (WallPlan wall : walls) {
            if (wall.elevation().id().equals(elevation.id())) {
                return wall;
            }
        }
        throw new NoSuchElementException("no wall " + elevation.id());
    }

    /** The method of one opening. */
    public Method method(Elevation elevation, Opening opening) {
        WallPlan wall = wall(elevation);
        for (int o = 0; o < wall.methods().size(); o++) {
            if (elevation.openings().get(o).id().equals(opening.id())) {
                return wall.methods().get(o);
            }
        }
        throw new IllegalArgumentException("no opening " + opening.id() + " on the wall " + elevation.id());
    }

    /** Whether a plan of these methods is all of a method, in part, or not: as tables have it. */
    public static String uses(Set<Method> plan, Method method) {
        return plan.contains(method) ? plan.size() > 1 ? "part" : "yes" : "no";
    }

    /** In table order over the walls. */
    public List<Method> byOpening() {
        List<Method> methods = new ArrayList<>();
        for (WallPlan wall : walls) {
            methods.addAll(wall.methods());
        }
        return Collections.unmodifiableList(methods);
    }

    /** The methods that it uses; none for a house without openings. */
    public Set<Method> methods() {
        return Method.set(byOpening());
    }

    /** The one method of the whole house; empty where it is mixed. */
    public Optional<Method> single() {
        return one(methods());
    }

    private static Optional<Method> one(Set<Method> used) {
        return used.size() == 1 ? Optional.of(used.iterator().next()) : Optional.empty();
    }
}
