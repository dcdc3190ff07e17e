package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import weatherlap.sim.run.PlanParts.Wall;
import weatherlap.sim.run.PlanParts.Way;

/**
 * All ways of doing a wall, looked for opening by opening. Ways that begin alike are left where none of them can be cheap enough: with what
 * the first openings cost, the least of each other, and what the wall shares by then, which more methods and panels make no cheaper.
 */
final class AllWays implements WallOptions {
    private final Wall wall;
    /** Open at each opening. */
    private final List<List<Way>> ways;
    /** Of all openings from each on, USD. */
    private final double[] leastUsd;

    private final WallOption cheapest;

    AllWays(Wall wall, List<List<Way>> ways) {
        this.wall = wall;
        this.ways = ways;
        leastUsd = new double[ways.size() + 1];
        for (int o = ways.size() - 1; o >= 0; o--) {
            leastUsd[o] = leastUsd[o + 1] + leastUsd(ways.get(o));
        }
        cheapest = cheapestOf(~0).orElseThrow();
    }

    /** Of an opening, the cheapest way by itself, USD. */
    static double leastUsd(List<Way> ways) {
        double least = Double.POSITIVE_INFINITY;
        for (Way way : ways) {
            least = Math.min(least, way.horizonUsd());
        }
        return least;
    }

    @Override
    public Optional<WallOption> cheapest(int set) {
        return cheapest.within(set) ? Optional.of(cheapest) : cheapestOf(set);
    }

    private Optional<WallOption> cheapestOf(int set) {
        Look look = new Look(set, Double.POSITIVE_INFINITY, true);
        return look.found.isEmpty() ? Optional.empty() : Optional.of(look.found.get(0));
    }

    @Override
    public List<WallOption> below(double belowUsd, int set) {
        return new Look(set, belowUsd, false).found;
    }

    @Override
    public double leastUsd() {
        return cheapest.usd();
    }

    /** One look for them. */
    private final class Look {
        private final int set;
        private final boolean cheapestAlone;
        private final Way[] chosen = new Way[ways.size()];
        private final BitSet[] down = new BitSet[chosen.length];
        private final List<WallOption> found = new ArrayList<>();
        private double belowUsd;

        Look(int set, double belowUsd, boolean cheapestAlone) {
            this.set = set;
            this.belowUsd = belowUsd;
            this.cheapestAlone = cheapestAlone;
            from(0, 0, new BitSet(), 0, 0);
        }

        private void from(int opening, int methods, BitSet panels, int count, double ownUsd) {
            double sharedUsd = PlanCost.sharedUsd(wall, methods, count);
            if (opening == chosen.length) {
                add(methods, ownUsd + sharedUsd);
            } else if (ownUsd + leastUsd[opening] + sharedUsd < PlanCost.aHairPast(belowUsd)) {
                for (Way way : ways.get(opening)) {
                    int more = WallOption.methodsWith(methods, way);
                    if ((more & ~set) == 0) {
                        chosen[opening] = way;
                        if (way.method().takesSidingDown()) {
                            BitSet joined = with(panels, opening);
                            from(opening + 1, more, joined, joined.cardinality(), ownUsd + way.horizonUsd());
                        } else {
                            from(opening + 1, more, panels, count, ownUsd + way.horizonUsd());
                        }
                    }
                }
            }
        }

        private void add(int methods, double usd) {
            if (usd < belowUsd) {
                if (cheapestAlone) {
                    found.clear();
                    belowUsd = usd;
                }
                found.add(new WallOption(Arrays.asList(chosen), methods, usd));
            }
        }

        private BitSet with(BitSet panels, int opening) {
            if (down[opening] == null) {
                down[opening] = new BitSet();
            }
            BitSet joined = down[opening];
            joined.clear();
            joined.or(panels);
            joined.or(wall.openings().get(opening).panels());
            return joined;
        }
    }
}
