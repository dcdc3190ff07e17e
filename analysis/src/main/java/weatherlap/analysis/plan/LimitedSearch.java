package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

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
 */
final class LimitedSearch {
    static final int MOST_LOOKS = 100_000;
    private static final double SLACK = 1e-12;

    private final List<List<WallOption>> walls;
    private final double[] setupUsd;
    private final double leastDry;
    private final List<double[]> reference;
    private final int mostLooks;
    private List<WallOption> best = List.of();
    private double usd;
    private double cutOffUsd = Double.POSITIVE_INFINITY;

    /**
     * @param walls options of each wall, the cheapest first
     * @param reference by wall and draw: chance of staying dry with a plan that keeps the limit
     * @param usd what that plan costs
     * @param mostLooks for each set of methods, such as {@link #MOST_LOOKS}
     */
    LimitedSearch(
            List<List<WallOption>> walls,
            double[] setupUsd,
            double leastDry,
            List<double[]> reference,
            double usd,
            int mostLooks) {
        this.walls = walls;
        this.setupUsd = setupUsd;
        this.leastDry = leastDry - SLACK;
        this.reference = reference;
        this.usd = usd;
        this.mostLooks = mostLooks;
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
     * Looks through the plans that use no other methods than these. An option that with the cheapest of every other wall costs as much as
     * what is found already, or that alone is too wet, is in no better plan.
     */
    void over(int set) {
        List<List<WallOption>> open = walls.stream()
                .map(wall -> wall.stream().filter(option -> option.within(set)).toList())
                .toList();
        if (open.stream().anyMatch(List::isEmpty)) {
            return;
        }
        double least = setupUsd[set]
                + open.stream().mapToDouble(wall -> wall.get(0).usd()).sum();
        List<List<Bounded>> options = new ArrayList<>();
        for (List<WallOption> wall : open) {
            double spare = usd - least + wall.get(0).usd();
            List<Bounded> own = undominated(wall.stream()
                    .filter(option -> option.usd() < spare)
                    .map(option -> new Bounded(option, option.dry(), 0))
                    .filter(option -> PlanSearch.mean(option.dry) >= leastDry)
                    .toList());
            if (own.isEmpty()) {
                return;
            }
            options.add(own);
        }
        new Branches(options, setupUsd[set]).look();
    }

    private double[] ones() {
        double[] ones = new double[reference.get(0).length];
        Arrays.fill(ones, 1);
        return ones;
    }

    /** Any N⁰ above 0 makes a bound. */
    private static double[] notZero(double[] chances) {
        return Arrays.stream(chances).map(chance -> Math.max(chance, 1e-9)).toArray();
    }

    /** An option, with its chance by draw and its part of the bound. */
    private record Bounded(WallOption option, double[] dry, double log) {}

    /**
     * Without those that another is neither dearer than nor wetter than in any draw. What is nowhere wetter has no smaller sum over the
     * draws, rounded sums included, so that only options of larger sums are held against one, the largest first.
     *
     * @param options the cheapest first
     */
    private static List<Bounded> undominated(List<Bounded> options) {
        List<Bounded> kept = new ArrayList<>();
        double[][] driestFirst = new double[options.size()][];
        double[] sums = new double[options.size()];
        for (Bounded option : options) {
            double sum = sum(option.dry);
            int place = 0;
            int wetter = 0; // where the last rival was, which is where the next one often is
            while (place < kept.size() && sums[place] >= sum && wetter >= 0) {
                double[] rival = driestFirst[place++];
                wetter = rival[wetter] < option.dry[wetter] ? wetter : firstWetter(rival, option.dry);
            }
            if (wetter >= 0) {
                System.arraycopy(sums, place, sums, place + 1, kept.size() - place);
                System.arraycopy(driestFirst, place, driestFirst, place + 1, kept.size() - place);
                sums[place] = sum;
                driestFirst[place] = option.dry;
                kept.add(option);
            }
        }
        return kept;
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
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

    /** One branch-and-bound search. */
    private final class Branches {
        private final List<List<Bounded>> options;
        private final double baseUsd;
        private final double logOfReference;
        private final List<Frontier> after = new ArrayList<>();
        private final WallOption[] chosen;
        private int looks;

        Branches(List<List<Bounded>> options, double baseUsd) {
            this.baseUsd = baseUsd;
            double[] weights = ones();
            reference.forEach(wall -> PlanCost.times(weights, notZero(wall)));
            this.options = IntStream.range(0, options.size())
                    .mapToObj(w -> bounded(options.get(w), notZero(reference.get(w)), weights))
                    .toList();
            logOfReference = Math.log(PlanSearch.mean(weights));
            Frontier frontier = Frontier.NOTHING;
            after.add(frontier);
            for (int w = options.size() - 1; w > 0; w--) {
                frontier = frontier.with(this.options.get(w));
                after.add(0, frontier);
            }
            chosen = new WallOption[options.size()];
        }

        private List<Bounded> bounded(List<Bounded> own, double[] wall, double[] weights) {
            return own.stream()
                    .map(option -> new Bounded(option.option, option.dry, log(option.dry, wall, weights)))
                    .toList();
        }

        private double log(double[] dry, double[] wall, double[] weights) {
            double sum = 0;
            double all = 0;
            for (int d = 0; d < dry.length; d++) {
                sum += weights[d] * Math.pow(dry[d] / wall[d], reference.size());
                all += weights[d];
            }
            return Math.log(sum / all) / reference.size();
        }

        void look() {
            look(0, baseUsd, 0, ones());
        }

        private void look(int wall, double spent, double log, double[] dry) {
            if (wall == chosen.length) {
                if (PlanSearch.mean(dry) >= leastDry) {
                    usd = spent;
                    best = List.of(chosen);
                }
                return;
            }
            double needed = Math.log(leastDry) - logOfReference - 1e-9;
            for (Bounded option : options.get(wall)) {
                double rest = after.get(wall).leastUsd(needed - log - option.log);
                double bound = spent + option.option.usd() + rest;
                if (bound < usd) {
                    if (++looks > mostLooks) {
                        cutOffUsd = Math.min(cutOffUsd, bound);
                        continue;
                    }
                    double[] next = dry.clone();
                    PlanCost.times(next, option.dry);
                    if (PlanSearch.mean(next) >= leastDry) {
                        chosen[wall] = option.option;
                        look(wall + 1, spent + option.option.usd(), log + option.log, next);
                    }
                }
            }
        }
    }

    /** Sums over some walls that no other beats on cost and on the bound of the chance; the cheaper first. */
    private record Frontier(double[] usd, double[] log) {
        static final Frontier NOTHING = new Frontier(new double[] {0}, new double[] {0});

        private record Sum(double usd, double log) {}

        Frontier with(List<Bounded> options) {
            List<Sum> sums = new ArrayList<>(options.size() * usd.length);
            for (Bounded option : options) {
                for (int i = 0; i < usd.length; i++) {
                    sums.add(new Sum(usd[i] + option.option.usd(), log[i] + option.log));
                }
            }
            sums.sort(Comparator.comparingDouble(Sum::usd));
            List<Sum> kept = new ArrayList<>();
            for (Sum sum : sums) {
                if (kept.isEmpty() || sum.log > kept.get(kept.size() - 1).log) {
                    kept.add(sum);
                }
            }
            return new Frontier(
                    kept.stream().mapToDouble(Sum::usd).toArray(),
                    kept.stream().mapToDouble(Sum::log).toArray());
        }

        /** Least cost at which so much is reached; infinite: at none. */
        double leastUsd(double needed) {
            int low = 0;
            int high = log.length;
            while (low < high) {
                int middle = (low + high) >>> 1;
                if (log[middle] >= needed) {
                    high = middle;
                } else {
                    low = middle + 1;
                }
            }
            return low == log.length ? Double.POSITIVE_INFINITY : usd[low];
        }
    }
}
