package weatherlap.analysis.plan;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseResult;

/**
 * The choice for one house.
 *
 * @param closed by elevation id in table order, then by method: what closes the method at that wall; nothing where it is open
 * @param wherever by method: this method wherever a limit lets it, the other elsewhere
 * @param family the cheapest plan for the family
 * @param shop the method that earns the shop more for each day of a crew, among those no limit closes all over the house
 * @param atRisk the chance of leak damage is over the family's limit with both methods
 */
public record HouseChoice(
        HouseResult result,
        Map<String, Map<Method, Set<Limit>>> closed,
        Map<Method, Plan> wherever,
        Plan family,
        Method shop,
        boolean atRisk) {
    public HouseChoice {
        wherever = Map.copyOf(wherever);
    }

    /**
     * Chooses.
     *
     * @param riskLimit largest acceptable chance of leak damage in the house, 0 to 1
     */
    public static HouseChoice of(HouseResult result, double riskLimit) {
        Walls walls = Walls.of(result, riskLimit);
        Map<Method, Plan> wherever = new EnumMap<>(Method.class);
        for (Method method : Method.values()) {
            wherever.put(method, PlanCost.plan(result, walls.wherever(method)));
        }
        Plan family = wherever.get(Method.INSERT);
        for (Plan rival : List.of(wherever.get(Method.FULL_FLANGE), PlanCost.plan(result, walls.cheapest(result)))) {
            family = rival.horizonCostUsd() < family.horizonCostUsd() ? rival : family;
        }
        return new HouseChoice(result, walls.closed(), wherever, family, shop(result, walls), walls.atRisk());
    }

    private static Method shop(HouseResult result, Walls walls) {
        EnumSet<Method> open = EnumSet.allOf(Method.class);
        open.removeIf(walls::closedAllOver);
        return open.stream()
                .max((a, b) -> Double.compare(perDay(result, a), perDay(result, b)))
                .orElseThrow();
    }

    private static double perDay(HouseResult result, Method method) {
        return result.method(method).grossProfitPerCrewDayUsd();
    }

    /** What closes a method at a wall or more. */
    public Set<Limit> closed(Method method) {
        EnumSet<Limit> all = EnumSet.noneOf(Limit.class);
        closed.values().forEach(wall -> all.addAll(wall.get(method)));
        return Collections.unmodifiableSet(all);
    }

    /** The better of the two plans of one method wherever possible: the family's answer to a question of flange or insert. */
    public Method familyMethod() {
        return differenceUsd() < 0 ? Method.FULL_FLANGE : Method.INSERT;
    }

    /** Plan of the full flange less plan of the insert, mean horizon cost, USD; 0 where limits make them the same plan. */
    public double differenceUsd() {
        return wherever.get(Method.FULL_FLANGE).horizonCostUsd()
                - wherever.get(Method.INSERT).horizonCostUsd();
    }

    /** Limits leave the house one plan, whichever method it starts from. */
    public boolean onePlan() {
        return wherever.get(Method.INSERT)
                .byElevation()
                .equals(wherever.get(Method.FULL_FLANGE).byElevation());
    }

    /** Family and shop want different methods. */
    public boolean interestsPart() {
        return differenceUsd() != 0 && familyMethod() != shop;
    }

    /** What the family would lose over the horizon by the shop's method, USD; 0 where they agree. */
    public double familyLosesUsd() {
        return interestsPart() ? Math.abs(differenceUsd()) : 0;
    }

    /** What the shop would lose of its gross profit for each day of a crew by the family's method, USD; 0 where they agree. */
    public double shopLosesPerDayUsd() {
        return interestsPart() ? perDay(result, shop) - perDay(result, shop.other()) : 0;
    }

    /** What mixing methods saves the family over the better of the two plans, USD; 0 where it does not pay. */
    public double mixingSavesUsd() {
        return wherever.get(familyMethod()).horizonCostUsd() - family.horizonCostUsd();
    }
}
