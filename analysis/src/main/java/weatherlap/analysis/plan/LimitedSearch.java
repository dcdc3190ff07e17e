package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import weatherlap.sim.Each;

/**
 * The cheapest choice of one option a wall that leaves the house dry with a chance of at least q, by branch and bound over the walls.
 *
 * <p>The chance of a house is f = mean over draws of ∏_w N_w. With the N⁰ of a reference plan and the weights T = ∏ N⁰, Hölder's
 * inequality bounds it by what adds up over the W walls:
 *
 * <pre>
 *   ln f ≤ ln mean T + Σ_w g_w       g_w = (1/W) ln ( Σ_d T_d (N_w/N⁰_w)^W / Σ_d T_d )
 * </pre>
 *
 * so that the plans of the walls still to come that no other beats on cost and on g bound what any of them can reach at a cost. Nothing is
 * lost by it; where the search is cut off after so many looks, the cheapest branch not looked into bounds the loss.
 *
 * <p>A search among the few options of each wall that no other beats on cost and on g comes first. What it finds is seldom undercut, so that
 * of all options few are left to be held against one another and searched.
 */
final class LimitedSearch {
    static final int MOST_LOOKS = 100_000;
    private static final double SLACK = 1e-12;

    private final List<WallOptions> walls;
    private final List<WallBound> bounds = new ArrayList<>();
    private final double[] setupUsd;
    private final double leastDry;
    /** Sum of g that a plan needs at least. */
    private final double needed;

    private final int mostLooks;
    private List<WallOption> best = List.of();
    private double usd;
    private double cutOffUsd = Double.POSITIVE_INFINITY;

    /**
     * @param reference by wall and draw: chance of staying dry with a plan that keeps the limit
     * @param usd what that plan costs
     * @param mostLooks for each set of methods, such as {@link #MOST_LOOKS}
     */
    LimitedSearch(
            List<WallOptions> walls,
            double[] setupUsd,
            double leastDry,
            List<double[]> reference,
            double usd,
            int mostLooks) {
        this.walls = walls;
        this.setupUsd = setupUsd;
        this.leastDry = leastDry - SLACK;
        this.usd = usd;
        this.mostLooks = mostLooks;
        double[] weights = PlanCost.ones(reference.get(0).length);
        List<double[]> above = new ArrayList<>();
        for (double[] wall : reference) {
            double[] chances = notZero(wall);
            above.add(chances);
            PlanCost.times(weights, chances);
        }
        double mean = PlanSearch.mean(weights);
        needed = Math.log(this.leastDry) - Math.log(mean) - 1e-9;
        for (int d = 0; d < weights.length; d++) {
            weights[d] /= mean * weights.length;
        }
        for (double[] wall : above) {
            bounds.add(new WallBound(wall, weights, walls.size(), this.leastDry));
        }
    }

    /** The cheapest found; empty where none is cheaper than the reference. */
    List<WallOption> best() {
        return best;
    }

    double usd() {
        return usd;
    }

    double lossBoundUsd() {
        return Math.max(0, usd - cutOffUsd);
    }

    /**
     * Looks through the plans of less than so many USD that use no other methods than these. An option that with the cheapest of every
     * other wall costs as much as that, or as what is found already, or that alone is too wet, is in no better plan.
     */
    void over(int set, double mostUsd) {
        double belowUsd = Math.min(usd, mostUsd);
        double least = setupUsd[set];
        double[] cheapest = new double[walls.size()];
        for (int w = 0; w < cheapest.length; w++) {
            cheapest[w] = walls.get(w).cheapest(set).map(WallOption::usd).orElse(Double.POSITIVE_INFINITY);
            least += cheapest[w];
        }
        if (least >= belowUsd) {
            return;
        }
        List<List<BoundedOption>> options = new ArrayList<>(cheapest.length);
        for (int w = 0; w < cheapest.length; w++) {
            List<BoundedOption> own = within(w, set, belowUsd - least + cheapest[w]);
            if (own.isEmpty()) {
                return;
            }
            options.add(own);
        }
        options = cheapEnough(options, set, belowUsd);
        if (Each.any(options, List::isEmpty)) {
            return;
        }
        options.forEach(own -> own.sort(Comparator.comparingDouble(BoundedOption::usd)));
        Branches few = branches(Each.of(options, LimitedSearch::unbeaten), set, belowUsd);
        double fewUsd = belowUsd;
        if (few.usd() < belowUsd) {
            fewUsd = PlanCost.aHairPast(few.usd()); // so that a plan of the same cost is found
            options = cheapEnough(options, set, fewUsd);
        }
        options.replaceAll(LimitedSearch::undominated);
        Branches all = branches(options, set, fewUsd);
        cutOffUsd = Math.min(cutOffUsd, all.cutOffUsd());
        Branches cheaper = few.usd() < all.usd() ? few : all;
        if (cheaper.usd() < belowUsd) {
            usd = cheaper.usd();
            best = cheaper.best();
        }
    }

    private Branches branches(List<List<BoundedOption>> options, int set, double belowUsd) {
        Branches branches = new Branches(options, needed, leastDry, mostLooks, belowUsd);
        branches.look(setupUsd[set]);
        return branches;
    }

    private List<BoundedOption> within(int wall, int set, double belowUsd) {
        List<BoundedOption> within = new ArrayList<>();
        for (WallOption option : walls.get(wall).below(belowUsd, set)) {
            double log = bounds.get(wall).log(option);
            if (log > Double.NEGATIVE_INFINITY) {
                within.add(new BoundedOption(option, log));
            }
        }
        return within;
    }

    /** Of each wall those that may be in a plan of less than so many USD, by the bound, before they are held against one another. */
    private List<List<BoundedOption>> cheapEnough(List<List<BoundedOption>> options, int set, double belowUsd) {
        List<Frontier> alone = Each.of(options, Frontier::of);
        List<List<BoundedOption>> cheap = new ArrayList<>(options.size());
        for (int w = 0; w < options.size(); w++) {
            Frontier others = Frontier.NOTHING;
            for (int other = 0; other < alone.size(); other++) {
                others = other == w ? others : others.with(alone.get(other));
            }
            List<BoundedOption> own = new ArrayList<>();
            for (BoundedOption option : options.get(w)) {
                if (setupUsd[set] + option.usd() + others.leastUsd(needed - option.log()) < belowUsd) {
                    own.add(option);
                }
            }
            cheap.add(own);
        }
        return cheap;
    }

    /**
     * Those that none before beats on g.
     *
     * @param options the cheapest first
     */
    private static List<BoundedOption> unbeaten(List<BoundedOption> options) {
        List<BoundedOption> kept = new ArrayList<>();
        double log = Double.NEGATIVE_INFINITY;
        for (BoundedOption option : options) {
            if (option.log() > log) {
                log = option.log();
                kept.add(option);
            }
        }
        return kept;
    }

    /** Any N⁰ above 0 makes a bound. */
    private static double[] notZero(double[] chances) {
        double[] above = chances.clone();
        for (int d = 0; d < above.length; d++) {
            above[d] = Math.max(above[d], 1e-9);
        }
        return above;
    }

    /**
     * Without those that another is neither dearer than nor wetter than in any draw. What is nowhere wetter has no smaller sum over the
     * draws, rounded sums included, so that only options of larger sums are held against one, the largest first.
     *
     * @param options the cheapest first
     */
    private static List<BoundedOption> undominated(List<BoundedOption> options) {
        List<BoundedOption> kept = new ArrayList<>();
        double[][] driestFirst = new double[options.size()][];
        double[] sums = new double[options.size()];
        for (BoundedOption option : options) {
            double[] own = option.dry();
            double sum = PlanCost.sum(own);
            int place = 0;
            int wetter = 0; // where the last rival was, which is where the next one often is
            while (place < kept.size() && sums[place] >= sum && wetter >= 0) {
                double[] rival = driestFirst[place++];
                wetter = rival[wetter] < own[wetter] ? wetter : firstWetter(rival, own);
            }
            if (wetter >= 0) {
                System.arraycopy(sums, place, sums, place + 1, kept.size() - place);
                System.arraycopy(driestFirst, place, driestFirst, place + 1, kept.size() - place);
                sums[place] = sum;
                driestFirst[place] = own;
                kept.add(option);
            }
        }
        return kept;
    }

    /** The first draw in which a rival is wetter; below 0 in none. */
    private static int firstWetter(double[] rival, double[] own) {
        for (int d = 0; d < own.length; d++) {
            if (rival[d] < own[d]) {
                return d;
            }
        }
        return -1;
    }
}
