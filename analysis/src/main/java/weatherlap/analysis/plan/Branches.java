package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** One search of {@link LimitedSearch} by branch and bound, wall by wall. */
final class Branches {
    private final List<List<BoundedOption>> options;
    private final double needed;
    private final double leastDry;
    private final int mostLooks;
    /** By wall: what the walls after it can reach at a cost. */
    private final List<Frontier> after = new ArrayList<>();

    private final WallOption[] chosen;
    /** By count of walls and draw: chance that so many, the first, stay dry with what is chosen. */
    private final double[][] dry;

    private List<WallOption> best = List.of();
    private double usd;
    private double cutOffUsd = Double.POSITIVE_INFINITY;
    private int looks;

    /**
     * @param options of each wall, one or more
     * @param needed sum of g that a plan needs at least
     * @param leastDry mean chance of the house that it needs
     * @param belowUsd what it must cost less than
     */
    Branches(List<List<BoundedOption>> options, double needed, double leastDry, int mostLooks, double belowUsd) {
        this.options = options;
        this.needed = needed;
        this.leastDry = leastDry;
        this.mostLooks = mostLooks;
        usd = belowUsd;
        Frontier frontier = Frontier.NOTHING;
        after.add(frontier);
        for (int w = options.size() - 1; w > 0; w--) {
            frontier = frontier.with(Frontier.of(options.get(w)));
            after.add(0, frontier);
        }
        chosen = new WallOption[options.size()];
        int draws = options.get(0).get(0).dry().length;
        dry = new double[chosen.length + 1][draws];
        Arrays.fill(dry[0], 1);
    }

    /** The cheapest found; empty: none. */
    List<WallOption> best() {
        return best;
    }

    /** What that costs; empty: the most it might. */
    double usd() {
        return usd;
    }

    /** No branch that was not looked into, for there were too many, has a plan of less. */
    double cutOffUsd() {
        return cutOffUsd;
    }

    /** @param baseUsd of the house, beside its walls */
    void look(double baseUsd) {
        look(0, baseUsd, 0);
    }

    private void look(int wall, double spent, double log) {
        if (wall == chosen.length) {
            usd = spent;
            best = List.of(chosen);
            return;
        }
        for (BoundedOption option : options.get(wall)) {
            double rest = after.get(wall).leastUsd(needed - log - option.log());
            double bound = spent + option.usd() + rest;
            if (bound < usd) {
                if (++looks > mostLooks) {
                    cutOffUsd = Math.min(cutOffUsd, bound);
                    continue;
                }
                PlanCost.product(dry[wall], option.dry(), dry[wall + 1]);
                if (PlanSearch.mean(dry[wall + 1]) >= leastDry) {
                    chosen[wall] = option.option();
                    look(wall + 1, spent + option.usd(), log + option.log());
                }
            }
        }
    }
}
