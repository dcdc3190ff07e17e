package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import weatherlap.sim.Each;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.PlanParts;
import weatherlap.sim.run.PlanParts.Part;
import weatherlap.sim.run.PlanParts.Way;
import weatherlap.sim.run.SimulatedHouse;

/**
 * One house with each method as the default.
 *
 * @param contrast the two of the house that are set side by side
 * @param plans by method: this method at every opening open to it, elsewhere what is cheapest there; it can be built, but may break the
 *     family's limit of leak damage
 * @param horizonDifferenceUsd by the first of the house's contrast less by the second, horizon cost by draw, USD; not to be changed
 */
@SuppressWarnings("ArrayRecordComponent") // draws, summed over houses by whoever needs the portfolio's
public record Wherever(Contrast contrast, Map<Method, Plan> plans, double[] horizonDifferenceUsd) {
    public Wherever {
        plans = Collections.unmodifiableMap(new EnumMap<>(plans));
    }

    /** The plans of a house, without the search for the cheapest of all. */
    public static Wherever of(SimulatedHouse house) {
        return of(house, Each.of(house.parts().openings(), OpenMethods::of));
    }

    /** @param open in table order over the walls */
    static Wherever of(SimulatedHouse house, List<OpenMethods> open) {
        Map<Method, Plan> plans = new EnumMap<>(Method.class);
        house.result().methods().keySet().forEach(method -> plans.put(method, plan(house.parts(), open, method)));
        Contrast contrast = house.result().contrast();
        return new Wherever(
                contrast, plans, difference(house.parts(), plans.get(contrast.first()), plans.get(contrast.second())));
    }

    /** The plan of the first method of the contrast. */
    public Plan first() {
        return plans.get(contrast.first());
    }

    public Plan second() {
        return plans.get(contrast.second());
    }

    private static Plan plan(PlanParts parts, List<OpenMethods> open, Method method) {
        List<Part> openings = parts.openings();
        List<Method> methods = new ArrayList<>(openings.size());
        for (int o = 0; o < openings.size(); o++) {
            methods.add(
                    open.get(o).open().contains(method)
                            ? method
                            : cheapest(open.get(o).ways(openings.get(o))));
        }
        return PlanCost.plan(parts, methods, 0);
    }

    private static Method cheapest(List<Way> ways) {
        return Collections.min(ways, Comparator.comparingDouble(Way::horizonUsd))
                .method();
    }

    private static double[] difference(PlanParts parts, Plan a, Plan b) {
        double[] difference = PlanCost.horizonUsd(parts, a);
        double[] other = PlanCost.horizonUsd(parts, b);
        for (int d = 0; d < difference.length; d++) {
            difference[d] -= other[d];
        }
        return difference;
    }
}
