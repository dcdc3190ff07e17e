package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import weatherlap.sim.Each;
import weatherlap.sim.Sum;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.PlanParts;
import weatherlap.sim.run.PlanParts.Part;
import weatherlap.sim.run.PlanParts.Way;

/**
 * The plan of a house: the cheapest for the family among those whose chance of leak damage keeps a limit; the least risky where none
 * does.
 */
final class PlanSearch {
    /** Of what the safe plan costs more than the cheapest of all: where the search begins, since ways grow many with what they may cost. */
    private static final double FIRST_SHARE = 0.1;

    private final PlanParts parts;
    private final List<OpenMethods> open;
    private final List<WallOptions> walls;
    /** Sets of methods that openings are open to, the larger last. */
    private final List<Integer> sets;

    /** @param open in table order over the walls */
    PlanSearch(PlanParts parts, List<OpenMethods> open) {
        this.parts = parts;
        this.open = open;
        sets = sets(open);
        walls = new ArrayList<>();
        int first = 0;
        for (PlanParts.Wall wall : parts.walls()) {
            int after = first + wall.openings().size();
            walls.add(WallOptions.of(wall, open.subList(first, after)));
            first = after;
        }
    }

    /** @param riskLimit largest acceptable chance of leak damage in the house, 0 to 1 */
    Plan best(double riskLimit) {
        Plan cheapest = cheapest();
        if (cheapest.leakProbability() <= riskLimit) {
            return cheapest;
        }
        Plan safe = leastRisky();
        return safe.leakProbability() > riskLimit ? safe : cheapestWithin(riskLimit, safe, cheapest);
    }

    private Plan leastRisky() {
        List<Part> openings = parts.openings();
        List<List<Way>> ways = new ArrayList<>(openings.size());
        for (int o = 0; o < openings.size(); o++) {
            ways.add(open.get(o).ways(openings.get(o)));
        }
        return PlanCost.plan(parts, methods(LeastRisk.of(ways)), 0);
    }

    /** Whatever its risk. */
    private Plan cheapest() {
        if (walls.isEmpty()) {
            return PlanCost.plan(parts, List.of(), 0);
        }
        List<WallOption> best = List.of();
        double usd = Double.POSITIVE_INFINITY;
        double bound = Double.POSITIVE_INFINITY;
        double least = Sum.of(walls, WallOptions::leastUsd);
        for (int set : sets) {
            bound = Math.min(bound, parts.setupUsd()[set] + least);
            List<WallOption> options = cheapest(set);
            double own = parts.setupUsd()[set] + Sum.of(options, WallOption::usd);
            if (options.size() == walls.size() && own < usd) {
                best = options;
                usd = own;
            }
        }
        return plan(best, isExact() ? 0 : usd - bound);
    }

    /** Of each wall that can be done with no other methods than these. */
    private List<WallOption> cheapest(int set) {
        List<WallOption> options = new ArrayList<>(walls.size());
        for (WallOptions wall : walls) {
            wall.cheapest(set).ifPresent(options::add);
        }
        return options;
    }

    private boolean isExact() {
        return walls.stream().allMatch(WallOptions::isExact);
    }

    /**
     * The cheapest plan that keeps a limit.
     *
     * @param safe a plan that does
     * @param cheapest a plan that does not
     */
    private Plan cheapestWithin(double riskLimit, Plan safe, Plan cheapest) {
        LimitedSearch search = new LimitedSearch(
                walls,
                parts.setupUsd(),
                1 - riskLimit,
                dryByWall(safe),
                safe.horizonCostUsd(),
                LimitedSearch.MOST_LOOKS);
        double spare = (safe.horizonCostUsd() - cheapest.horizonCostUsd()) * FIRST_SHARE;
        double mostUsd = 0;
        while (search.best().isEmpty() && mostUsd < safe.horizonCostUsd()) {
            mostUsd = cheapest.horizonCostUsd() + spare;
            for (int set : sets) {
                search.over(set, mostUsd);
            }
            spare *= 2;
        }
        double usd = search.best().isEmpty() ? safe.horizonCostUsd() : search.usd();
        double bound = isExact() ? search.lossBoundUsd() : usd - (cheapest.horizonCostUsd() - cheapest.lossBoundUsd());
        return search.best().isEmpty() ? PlanCost.plan(parts, safe.byOpening(), bound) : plan(search.best(), bound);
    }

    private List<double[]> dryByWall(Plan plan) {
        List<double[]> dry = new ArrayList<>(walls.size());
        for (int w = 0; w < walls.size(); w++) {
            dry.add(LeastRisk.product(PlanCost.ways(
                    parts.walls().get(w).openings(), plan.walls().get(w).methods())));
        }
        return dry;
    }

    private static List<Integer> sets(List<OpenMethods> open) {
        int all = 0;
        for (OpenMethods opening : open) {
            all |= PlanParts.mask(opening.open());
        }
        List<Integer> sets = new ArrayList<>();
        for (int set = 1; set <= all; set++) {
            if ((set & ~all) == 0) {
                sets.add(set);
            }
        }
        sets.sort(Comparator.comparingInt(Integer::bitCount));
        return sets;
    }

    private Plan plan(List<WallOption> options, double lossBoundUsd) {
        List<Way> ways = new ArrayList<>();
        options.forEach(option -> ways.addAll(option.ways()));
        return PlanCost.plan(parts, methods(ways), lossBoundUsd);
    }

    private static List<Method> methods(List<Way> ways) {
        return Each.of(ways, Way::method);
    }

    /** Summed without loss, so that means of plans that differ by little compare by what they differ by. */
    static double mean(double[] values) {
        return Sum.of(values) / values.length;
    }
}
