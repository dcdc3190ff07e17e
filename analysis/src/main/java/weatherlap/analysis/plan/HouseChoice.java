package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import weatherlap.analysis.plan.Plan.WallPlan;
import weatherlap.sim.Each;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.PlanParts;
import weatherlap.sim.run.SimulatedHouse;

/**
 * The choice for one house.
 *
 * @param closed by opening in table order over the walls, then by closed method: the limits that close it there
 * @param wherever by method: the plan with it as the default, {@link Wherever}
 * @param overLimit methods whose plan breaks that limit while some plan of the house keeps it
 * @param family the cheapest plan for the family within the limit; the least risky where no plan keeps it
 * @param shop the method that earns the shop more for each day of a crew, among those that {@code wherever} can use
 * @param atRisk no plan keeps the family's limit of leak damage
 * @param horizonDifferenceUsd {@code wherever} by the first of the house's contrast less by the second, horizon cost by draw, USD; not to be changed
 */
@SuppressWarnings("ArrayRecordComponent") // draws, summed over houses by whoever needs the portfolio's
public record HouseChoice(
        HouseResult result,
        List<Map<Method, Set<Limit>>> closed,
        Map<Method, Plan> wherever,
        Set<Method> overLimit,
        Plan family,
        Method shop,
        boolean atRisk,
        double[] horizonDifferenceUsd) {
    public HouseChoice {
        closed = List.copyOf(closed);
        wherever = Collections.unmodifiableMap(new EnumMap<>(wherever));
        overLimit = Set.copyOf(overLimit);
    }

    /**
     * Chooses.
     *
     * @param riskLimit largest acceptable chance of leak damage in the house, 0 to 1
     */
    public static HouseChoice of(SimulatedHouse house, double riskLimit) {
        PlanParts parts = house.parts();
        List<OpenMethods> open = Each.of(parts.openings(), OpenMethods::of);
        PlanSearch search = new PlanSearch(parts, open);
        Plan family = search.best(riskLimit);
        boolean atRisk = family.leakProbability() > riskLimit;
        Wherever wherever = Wherever.of(house, open);
        Set<Method> over = EnumSet.noneOf(Method.class);
        wherever.plans().forEach((method, plan) -> {
            if (plan.leakProbability() > riskLimit) {
                over.add(method);
            }
        });
        return new HouseChoice(
                house.result(),
                Each.of(open, opening -> closed(opening, house.result().house().cladding())),
                wherever.plans(),
                atRisk ? Set.of() : over,
                family,
                shop(house.result(), wherever.plans()),
                atRisk,
                wherever.horizonDifferenceUsd());
    }

    /** The same for each of some houses, in their order. */
    public static List<HouseChoice> each(List<SimulatedHouse> houses, double riskLimit) {
        return Each.of(houses, house -> of(house, riskLimit));
    }

    private static Map<Method, Set<Limit>> closed(OpenMethods opening, Cladding cladding) {
        Map<Method, Set<Limit>> closed = new EnumMap<>(Method.class);
        closed.putAll(opening.closed());
        for (Method method : Method.values()) {
            if (!method.isOpenTo(cladding)) {
                closed.put(method, Set.of(Limit.BEHIND_MASONRY));
            }
        }
        return Collections.unmodifiableMap(closed);
    }

    private static Method shop(HouseResult result, Map<Method, Plan> wherever) {
        Method best = null;
        for (Map.Entry<Method, Plan> plan : wherever.entrySet()) {
            Method method = plan.getKey();
            boolean better = best == null || Double.compare(perDay(result, method), perDay(result, best)) > 0;
            best = better && plan.getValue().methods().contains(method) ? method : best;
        }
        return best == null ? result.preferred() : best;
    }

    private static double perDay(HouseResult result, Method method) {
        return result.method(method).grossProfitPerCrewDayUsd();
    }

    /** What closes a method at an opening or more, or all over. */
    public Set<Limit> closed(Method method) {
        EnumSet<Limit> all = EnumSet.noneOf(Limit.class);
        closed.forEach(opening -> all.addAll(opening.getOrDefault(method, Set.of())));
        if (overLimit.contains(method)) {
            all.add(Limit.RISK_LIMIT);
        }
        return Collections.unmodifiableSet(all);
    }

    /** What closes a method at an opening of a wall or more, or all over. */
    public Set<Limit> closed(Elevation wall, Method method) {
        EnumSet<Limit> all = EnumSet.noneOf(Limit.class);
        int first = 0;
        for (WallPlan plan : family.walls()) {
            int after = first + plan.methods().size();
            if (plan.elevation().id().equals(wall.id())) {
                closed.subList(first, after).forEach(opening -> all.addAll(opening.getOrDefault(method, Set.of())));
            }
            first = after;
        }
        if (overLimit.contains(method)) {
            all.add(Limit.RISK_LIMIT);
        }
        return Collections.unmodifiableSet(all);
    }

    /** Openings at which the limit closes the method, by their positions in table order over the walls. */
    public List<Integer> closedAt(Method method, Limit limit) {
        List<Integer> at = new ArrayList<>();
        for (int o = 0; o < closed.size(); o++) {
            if (closed.get(o).getOrDefault(method, Set.of()).contains(limit)) {
                at.add(o);
            }
        }
        return at;
    }

    /** The better of the two plans of one method wherever possible: the family's answer to a question of flange or insert. */
    public Method familyMethod() {
        return result.contrast().cheaper(differenceUsd());
    }

    /** Plan of the first method of the contrast less plan of the second, mean horizon cost, USD; 0 where limits make them the same plan. */
    public double differenceUsd() {
        return wherever.get(result.contrast().first()).horizonCostUsd()
                - wherever.get(result.contrast().second()).horizonCostUsd();
    }

    /** What a crew day earns the shop more by the first method of the contrast than by the second, gross profit, USD. */
    public double shopEarnsMoreUsd() {
        return perDay(result, result.contrast().first())
                - perDay(result, result.contrast().second());
    }

    /** Limits leave the house one plan, whichever of the two methods it starts from. */
    public boolean onePlan() {
        return wherever.get(result.contrast().first())
                .byOpening()
                .equals(wherever.get(result.contrast().second()).byOpening());
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
        return interestsPart() ? perDay(result, shop) - perDay(result, familyMethod()) : 0;
    }

    /**
     * What choosing window by window saves the family over the better of the two plans, USD; 0 where it saves nothing, as where the limit of
     * leak damage has its price.
     */
    public double mixingSavesUsd() {
        return Math.max(0, wherever.get(familyMethod()).horizonCostUsd() - family.horizonCostUsd());
    }
}
