package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import weatherlap.sim.Each;
import weatherlap.sim.run.PlanParts.Wall;
import weatherlap.sim.run.PlanParts.Way;

/**
 * Some ways of doing a wall: opening by opening, the cheapest {@link #MOST_KEPT} of each count of openings done by a method that takes
 * siding down, fewer of each where there are many counts, so that memory and time of a wall grow no faster than with the square of its
 * openings.
 *
 * @param leastUsd that no way of doing the wall costs less than
 */
record SomeWays(List<WallOption> options, double leastUsd) implements WallOptions {
    private static final int MOST_KEPT = 64;
    private static final int MOST_KEPT_IN_ALL = MOST_KEPT * MOST_KEPT;

    SomeWays {
        options = List.copyOf(options);
    }

    /** @param ways open at each opening */
    static SomeWays of(Wall wall, List<List<Way>> ways) {
        List<FirstOpenings> firsts = List.of(FirstOpenings.NONE);
        double least = 0;
        for (int o = 0; o < ways.size(); o++) {
            List<FirstOpenings> longer = new ArrayList<>();
            for (FirstOpenings first : firsts) {
                for (Way way : ways.get(o)) {
                    longer.add(first.with(way, wall));
                }
            }
            firsts = kept(longer, ways.size() + 1);
            least += AllWays.leastUsd(ways.get(o));
        }
        return new SomeWays(Each.of(firsts, FirstOpenings::option), least);
    }

    private static List<FirstOpenings> kept(List<FirstOpenings> longer, int counts) {
        int most = Math.max(1, Math.min(MOST_KEPT, MOST_KEPT_IN_ALL / counts));
        int[] seen = new int[counts];
        longer.sort(Comparator.comparingDouble(FirstOpenings::usd));
        return Each.where(longer, first -> seen[first.sidings()]++ < most);
    }

    @Override
    public Optional<WallOption> cheapest(int set) {
        return below(Double.POSITIVE_INFINITY, set).stream().min(Comparator.comparingDouble(WallOption::usd));
    }

    @Override
    public List<WallOption> below(double belowUsd, int set) {
        return Each.where(options, option -> option.usd() < belowUsd && option.within(set));
    }
}
