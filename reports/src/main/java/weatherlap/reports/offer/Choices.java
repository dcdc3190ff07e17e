package weatherlap.reports.offer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.plan.Plan;
import weatherlap.analysis.plan.PlanSums;
import weatherlap.reports.offer.OfferedPlan.Kind;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.run.PlanParts;
import weatherlap.sim.run.SimulatedHouse;

/**
 * The choices of one house, no two of them alike, at most three.
 *
 * @param parts of any plan of the house
 * @param choice what is best for the family, and what is closed at which window
 * @param all in the order of the sheet
 * @param leaks what the house can come to at the least and at the most
 */
public record Choices(PlanParts parts, HouseChoice choice, List<OfferedPlan> all, LeakSpan leaks) {
    private static final int MOST = 3;

    public Choices {
        all = List.copyOf(all);
    }

    /**
     * @param each the house by every method that it is open to
     * @param line what the family has ticked, {@link ChoiceLine}; empty: nothing is
     * @throws ChoiceLine.Refused where that is of another house or cannot be built
     */
    public static Choices of(
            SimulatedHouse house, double riskLimit, Map<Method, HouseTakeoff> each, Optional<String> line) {
        HouseChoice choice = HouseChoice.of(house, riskLimit);
        PlanParts parts = house.parts();
        List<OfferedPlan> all = new ArrayList<>();
        var contrast = house.result().contrast();
        line.map(ticked -> ChoiceLine.parse(ticked, house.result().house(), choice.closed()))
                .map(methods -> Plan.of(parts, methods))
                .ifPresent(plan -> add(all, parts, each, Kind.OWN, plan));
        add(all, parts, each, Kind.FIRST, choice.wherever().get(contrast.first()));
        add(all, parts, each, Kind.SECOND, choice.wherever().get(contrast.second()));
        add(all, parts, each, Kind.MIXED, choice.family());
        if (all.size() > MOST) {
            all.remove(all.stream()
                    .filter(one -> one.kind() == Kind.FIRST || one.kind() == Kind.SECOND)
                    .max(Comparator.comparingDouble(one -> one.plan().horizonCostUsd()))
                    .orElseThrow());
        }
        return new Choices(parts, choice, all, LeakSpan.of(parts, choice));
    }

    private static void add(
            List<OfferedPlan> all, PlanParts parts, Map<Method, HouseTakeoff> each, Kind kind, Plan plan) {
        if (all.stream().noneMatch(one -> one.methods().equals(plan.byOpening()))) {
            all.add(new OfferedPlan(
                    kind,
                    plan,
                    HouseTakeoff.mixed(each, plan.byOpening()),
                    PlanSums.expectedLeaks(parts, plan),
                    PlanSums.damageUsd(parts, plan)));
        }
    }

    /** The one that is the family's plan. */
    public OfferedPlan recommended() {
        return all.stream()
                .filter(one -> one.methods().equals(choice.family().byOpening()))
                .findFirst()
                .orElseThrow();
    }

    /** The methods that any of the choices uses, in their order. */
    public Set<Method> methods() {
        EnumSet<Method> used = EnumSet.noneOf(Method.class);
        all.forEach(one -> used.addAll(one.methods()));
        return used;
    }

    public LeakRank rank(OfferedPlan one) {
        return leaks.rank(one.expectedLeaks());
    }
}
