package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.PlanParts;
import weatherlap.sim.run.PlanParts.Part;
import weatherlap.sim.run.PlanParts.Way;

/**
 * The plan of a house: the cheapest for the family among those whose chance of leak damage keeps a limit; the least risky where none
 * does.
 */
final class PlanSearch {
    private final PlanParts parts;
    private final List<OpenMethods> open;
    private final List<WallOptions> walls;

    /** @param open in table order over the walls */
    PlanSearch(PlanParts parts, List<OpenMethods> open) {
        this.parts = parts;
        this.open = open;
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
        List<Way> ways = LeastRisk.of(IntStream.range(0, openings.size())
                .mapToObj(o -> open.get(o).ways(openings.get(o)))
                .toList());
        return PlanCost.plan(parts, methods(ways), 0);
    }

    /** Whatever its risk. */
    private Plan cheapest() {
        if (walls.isEmpty()) {
            return PlanCost.plan(parts, List.of(), 0);
        }
        List<WallOption> best = List.of();
        double usd = Double.POSITIVE_INFINITY;
        double bound = Double.POSITIVE_INFINITY;
        for (int set : sets()) {
            List<WallOption> options = walls.stream()
                    .map(wall -> wall.cheapest(set))
                    .flatMap(Optional::stream)
                    .toList();
            double least = parts.setupUsd()[set]
                    + walls.stream().mapToDouble(WallOptions::leastUsd).sum();
            bound = Math.min(bound, least);
            double own = parts.setupUsd()[set]
                    + options.stream().mapToDouble(WallOption::usd).sum();
            if (options.size() == walls.size() && own < usd) {
                best = options;
                usd = own;
            }
        }
        return plan(best, isExact() ? 0 : usd - bound);
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
                walls.stream().map(WallOptions::cheapestFirst).toList(),
                parts.setupUsd(),
                1 - riskLimit,
                dryByWall(safe),
                safe.horizonCostUsd(),
                LimitedSearch.MOST_LOOKS);
        for (int set : sets()) {
            search.over(set);
        }
        double usd = search.best().isEmpty() ? safe.horizonCostUsd() : search.usd();
        double bound = isExact() ? search.lossBoundUsd() : usd - (cheapest.horizonCostUsd() - cheapest.lossBoundUsd());
        return search.best().isEmpty() ? PlanCost.plan(parts, safe.byOpening(), bound) : plan(search.best(), bound);
    }

    private List<double[]> dryByWall(Plan plan) {
        return IntStream.range(0, parts.walls().size())
                .mapToObj(w -> LeastRisk.product(PlanCost.ways(
                        parts.walls().get(w).openings(), plan.walls().get(w).methods())))
                .toList();
    }

    /** Sets of methods that openings are open to, the larger last. */
    private int[] sets() {
        int all = open.stream().mapToInt(o -> PlanParts.mask(o.open())).reduce(0, (a, b) -> a | b);
        return IntStream.rangeClosed(1, all)
                .filter(set -> (set & ~all) == 0)
                .boxed()
                .sorted((a, b) -> Integer.compare(Integer.bitCount(a), Integer.bitCount(b)))
                .mapToInt(set -> set)
                .toArray();
    }

    private Plan plan(List<WallOption> options, double lossBoundUsd) {
        return PlanCost.plan(
                parts,
                methods(options.stream()
                        .flatMap(option -> option.ways().stream())
                        .toList()),
                lossBoundUsd);
    }

    private static List<Method> methods(List<Way> ways) {
        return ways.stream().map(Way::method).toList();
    }

    /** Summed after Kahan, so that means of plans that differ by little compare by what they differ by. */
    static double mean(double[] values) {
        double sum = 0;
        double lost = 0;
        for (double value : values) {
            double next = value - lost;
            double larger = sum + next;
            lost = larger - sum - next;
            sum = larger;
        }
        return (sum - lost) / values.length;
    }
}
