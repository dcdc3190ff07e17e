package weatherlap.analysis.choice;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import weatherlap.sim.assumptions.Method;
import weatherlap.sim.run.HouseResult;

/**
 * The choice for one house.
 *
 * @param closed limits by method that close it at one wall or more
 * @param wherever by method: this method wherever a limit lets it, the other elsewhere
 * @param family the cheapest plan for the family
 * @param shop the method that earns the shop more for each day of a crew, among those no limit closes all over the house
 * @param atRisk the chance of leak damage is over the family's limit with both methods
 */
public record HouseChoice(
        HouseResult result,
        Map<Method, Set<Limit>> closed,
        Map<Method, Plan> wherever,
        Plan family,
        Method shop,
        boolean atRisk) {
    public HouseChoice {
        closed = Map.copyOf(closed);
        wherever = Map.copyOf(wherever);
    }

    /**
     * Chooses.
     *
     * @param riskLimit largest acceptable chance of leak damage in the house, 0 to 1
     * @param setupUsd of each method ({@link SecondMethod}), USD
     */
    static HouseChoice of(HouseResult result, double riskLimit, Map<Method, Double> setupUsd) {
        Walls walls = Walls.of(result, riskLimit);
        PlanCost cost = new PlanCost(result, setupUsd);
        Map<Method, Plan> wherever = new EnumMap<>(Method.class);
        for (Method method : Method.values()) {
            wherever.put(method, cost.plan(walls.wherever(method)));
        }
        Plan family = wherever.get(Method.INSERT);
        for (Plan rival : List.of(wherever.get(Method.FULL_FLANGE), cost.plan(walls.cheapest(result)))) {
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

    /** The better of the two plans of one method wherever possible: the family's answer to a question of flange or insert. */
    Method familyMethod() {
        return differenceUsd() < 0 ? Method.FULL_FLANGE : Method.INSERT;
    }

    /** Plan of the full flange less plan of the insert, mean horizon cost, USD; 0 where limits make them the same plan. */
    double differenceUsd() {
        return wherever.get(Method.FULL_FLANGE).horizonCostUsd()
                - wherever.get(Method.INSERT).horizonCostUsd();
    }

    /** Family and shop want different methods. */
    boolean interestsPart() {
        return differenceUsd() != 0 && familyMethod() != shop;
    }

    /** What the family would lose over the horizon by the shop's method, USD; 0 where they agree. */
    double familyLosesUsd() {
        return interestsPart() ? Math.abs(differenceUsd()) : 0;
    }

    /** What the shop would lose of its gross profit for each day of a crew by the family's method, USD; 0 where they agree. */
    double shopLosesPerDayUsd() {
        return interestsPart() ? perDay(result, shop) - perDay(result, shop.other()) : 0;
    }

    /** What mixing methods saves the family over the better of the two plans, USD; 0 where it does not pay. */
    double mixingSavesUsd() {
        return wherever.get(familyMethod()).horizonCostUsd() - family.horizonCostUsd();
    }
}
