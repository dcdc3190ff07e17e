package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import weatherlap.analysis.plan.PlanReason.Swap;
import weatherlap.analysis.plan.PlanReason.Why;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.PlanParts;
import weatherlap.sim.run.PlanParts.Part;
import weatherlap.sim.run.PlanParts.Wall;
import weatherlap.sim.run.Summary;

/** Gives each opening of the family's plan its reason. */
public final class PlanReasons {
    private final PlanParts parts;
    private final HouseChoice choice;
    private final List<Method> methods;
    private final double riskLimit;

    private PlanReasons(PlanParts parts, HouseChoice choice, double riskLimit) {
        this.parts = parts;
        this.choice = choice;
        this.methods = choice.family().byOpening();
        this.riskLimit = riskLimit;
    }

    /**
     * By opening, in table order over the walls.
     *
     * @param choice made of the same house
     * @param riskLimit by the same limit, 0 to 1
     */
    public static List<PlanReason> of(PlanParts parts, HouseChoice choice, double riskLimit) {
        PlanReasons reasons = new PlanReasons(parts, choice, riskLimit);
        List<PlanReason> all = new ArrayList<>();
        for (Wall wall : parts.walls()) {
            int first = all.size();
            for (int o = 0; o < wall.openings().size(); o++) {
                all.add(reasons.of(wall, first, o));
            }
        }
        return all;
    }

    /** Chance of leak damage in the house under a plan, percent: mean, and band over the causes that are not known. */
    public static Summary leakScore(PlanParts parts, Plan plan) {
        double[] dry = LeastRisk.product(PlanCost.ways(parts.openings(), plan.byOpening()));
        double[] percent = new double[dry.length];
        for (int d = 0; d < dry.length; d++) {
            percent[d] = 100 * (1 - dry[d]);
        }
        return Summary.of(percent);
    }

    /** @param first position of the wall's first opening in the house */
    private PlanReason of(Wall wall, int first, int o) {
        int at = first + o;
        Part part = wall.openings().get(o);
        List<Swap> swaps = part.ways().stream()
                .map(PlanParts.Way::method)
                .filter(method ->
                        method != methods.get(at) && !choice.closed().get(at).containsKey(method))
                .map(method -> swap(at, method))
                .sorted(Comparator.comparingDouble(Swap::moreUsd))
                .toList();
        double sidingUsd =
                swaps.isEmpty() ? 0 : sidingUsd(wall, first, o, swaps.get(0).method());
        return new PlanReason(
                wall.elevation(),
                part.opening(),
                methods.get(at),
                why(swaps, sidingUsd),
                choice.closed().get(at),
                swaps.stream().findFirst(),
                sidingUsd,
                riskLimit);
    }

    private Why why(List<Swap> swaps, double sidingUsd) {
        Optional<Swap> within =
                swaps.stream().filter(swap -> swap.leakProbability() <= limit()).findFirst();
        if (swaps.isEmpty()) {
            return Why.ONLY_ONE;
        }
        if (within.isEmpty() && choice.atRisk()) {
            return Why.LEAST_RISK;
        }
        if (swaps.get(0).moreUsd() >= 0) {
            return sidingUsd > swaps.get(0).moreUsd() ? Why.SHARES_SIDING : Why.CHEAPER;
        }
        return within.isEmpty() || within.get().moreUsd() >= 0 ? Why.KEEPS_LIMIT : Why.BEST_FOUND;
    }

    /** Where no plan keeps the family's limit, the least chance of any is the limit. */
    private double limit() {
        return choice.atRisk() ? choice.family().leakProbability() : riskLimit;
    }

    private Swap swap(int at, Method method) {
        List<Method> swapped = new ArrayList<>(methods);
        swapped.set(at, method);
        Plan other = PlanCost.plan(parts, swapped, 0);
        Plan plan = choice.family();
        return new Swap(
                method,
                other.horizonCostUsd() - plan.horizonCostUsd(),
                plan.leakProbability(),
                other.leakProbability());
    }

    /** Price of the panels of an opening that others on its wall take down too; 0 where the other method would take them down as well. */
    private double sidingUsd(Wall wall, int first, int o, Method other) {
        if (!methods.get(first + o).takesSidingDown() || other.takesSidingDown()) {
            return 0;
        }
        List<Method> own = methods.subList(first, first + wall.openings().size());
        BitSet shared = new BitSet();
        IntStream.range(0, own.size())
                .filter(p -> p != o && own.get(p).takesSidingDown())
                .forEach(p -> shared.or(wall.openings().get(p).panels()));
        shared.and(wall.openings().get(o).panels());
        return shared.cardinality() * wall.perPanelUsd()[PlanParts.mask(own)];
    }
}
