package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.List;
import weatherlap.sim.Each;
import weatherlap.sim.run.PlanParts.Way;

/**
 * The plan with the least chance of leak damage. With the openings' chances of staying dry N_o(d), by draw, it is the one with the
 * largest mean of ∏ N_o. A method a beats a method b at an opening, whatever is done at the others, where
 *
 * <pre>
 *   Σ_d ( low_d max(0, a_d − b_d) − high_d max(0, b_d − a_d) ) ≥ 0
 * </pre>
 *
 * low and high: the least and the largest product of the others in the draw. What is left open after that is tried, up to {@link #MOST}
 * plans; beyond them, opening by opening until no change helps.
 */
final class LeastRisk {
    private static final int MOST = 4096;

    private final List<List<Way>> ways;
    /** By opening and draw: the least, and the largest, chance of staying dry of any of its ways. */
    private final double[][] lows;

    private final double[][] highs;
    private final int draws;

    private LeastRisk(List<List<Way>> ways) {
        this.ways = new ArrayList<>(ways);
        draws = ways.get(0).get(0).dry().length;
        lows = new double[ways.size()][];
        highs = new double[ways.size()][];
        for (int o = 0; o < lows.length; o++) {
            bound(o);
        }
    }

    private void bound(int opening) {
        List<Way> open = ways.get(opening);
        double[] first = open.get(0).dry();
        if (open.size() == 1) {
            lows[opening] = first;
            highs[opening] = first;
            return;
        }
        double[] low = first.clone();
        double[] high = first.clone();
        for (int w = 1; w < open.size(); w++) {
            double[] dry = open.get(w).dry();
            for (int d = 0; d < draws; d++) {
                low[d] = dry[d] < low[d] ? dry[d] : low[d];
                high[d] = dry[d] > high[d] ? dry[d] : high[d];
            }
        }
        lows[opening] = low;
        highs[opening] = high;
    }

    /** @param ways open at each opening, of one opening or more */
    static List<Way> of(List<List<Way>> ways) {
        LeastRisk risk = new LeastRisk(ways);
        while (risk.plans() > 1 && risk.prune()) {
            continue;
        }
        return risk.plans() <= MOST ? risk.best() : risk.ascend();
    }

    /** How many are left open; where they are many, some number beyond those that are tried. */
    private long plans() {
        long plans = 1;
        for (List<Way> open : ways) {
            plans = Math.min(MOST + 1L, plans * open.size());
        }
        return plans;
    }

    private boolean prune() {
        boolean pruned = false;
        double[][] lowAfter = productsAfter(lows);
        double[][] highAfter = productsAfter(highs);
        double[] lowBefore = PlanCost.ones(draws);
        double[] highBefore = PlanCost.ones(draws);
        for (int o = 0; o < ways.size(); o++) {
            if (ways.get(o).size() > 1) {
                PlanCost.times(lowAfter[o], lowBefore);
                PlanCost.times(highAfter[o], highBefore);
                List<Way> kept = unbeaten(ways.get(o), lowAfter[o], highAfter[o]);
                if (kept.size() < ways.get(o).size()) {
                    pruned = true;
                    ways.set(o, kept);
                    bound(o);
                }
            }
            PlanCost.times(lowBefore, lows[o]);
            PlanCost.times(highBefore, highs[o]);
        }
        return pruned;
    }

    private static List<Way> unbeaten(List<Way> open, double[] low, double[] high) {
        List<Way> kept = new ArrayList<>();
        for (Way way : open) {
            if (!Each.any(kept, rival -> beats(rival, way, low, high))) {
                kept.removeIf(rival -> beats(way, rival, low, high));
                kept.add(way);
            }
        }
        return kept;
    }

    /** Of the bounds of all openings after each. */
    private double[][] productsAfter(double[][] bounds) {
        double[][] products = new double[bounds.length][];
        double[] product = PlanCost.ones(draws);
        for (int o = bounds.length - 1; o >= 0; o--) {
            products[o] = product;
            product = PlanCost.product(product, bounds[o]);
        }
        return products;
    }

    private static boolean beats(Way a, Way b, double[] low, double[] high) {
        double sum = 0;
        double[] ofA = a.dry();
        double[] ofB = b.dry();
        for (int d = 0; d < low.length; d++) {
            double gain = ofA[d] - ofB[d];
            sum += gain * (gain > 0 ? low[d] : high[d]);
        }
        return sum >= 0;
    }

    private List<Way> best() {
        List<List<Way>> plans = List.of(List.of());
        for (List<Way> open : ways) {
            List<List<Way>> longer = new ArrayList<>();
            plans.forEach(plan -> open.forEach(way -> longer.add(with(plan, way))));
            plans = longer;
        }
        List<Way> best = plans.get(0);
        double driest = plans.size() > 1 ? mean(best) : 0;
        for (List<Way> plan : plans.subList(1, plans.size())) {
            double mean = mean(plan);
            if (mean > driest) {
                best = plan;
                driest = mean;
            }
        }
        return best;
    }

    private static List<Way> with(List<Way> plan, Way way) {
        List<Way> longer = new ArrayList<>(plan);
        longer.add(way);
        return longer;
    }

    private List<Way> ascend() {
        List<Way> plan = new ArrayList<>();
        ways.forEach(open -> plan.add(open.get(0)));
        double driest = mean(plan);
        boolean better = true;
        while (better) {
            better = false;
            for (int o = 0; o < plan.size(); o++) {
                for (Way way : ways.get(o)) {
                    Way before = plan.set(o, way);
                    double mean = mean(plan);
                    if (mean > driest) {
                        driest = mean;
                        better = true;
                    } else {
                        plan.set(o, before);
                    }
                }
            }
        }
        return plan;
    }

    private double mean(List<Way> plan) {
        return PlanSearch.mean(product(plan));
    }

    /** By draw: chance that all stay dry. */
    static double[] product(List<Way> plan) {
        double[] dry = plan.get(0).dry().clone();
        for (int o = 1; o < plan.size(); o++) {
            PlanCost.times(dry, plan.get(o).dry());
        }
        return dry;
    }
}
