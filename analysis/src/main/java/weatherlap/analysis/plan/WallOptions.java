package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.PlanParts.Part;
import weatherlap.sim.run.PlanParts.Wall;
import weatherlap.sim.run.PlanParts.Way;

/**
 * The ways of doing a wall: all of them up to {@link #MOST_EXACT} openings. Of a wall with more, opening by opening,
 * the cheapest {@link #MOST_KEPT} of each count of openings done by a method that takes siding down, fewer of each where there are many
 * counts, so that memory and time of a wall grow no faster than with the square of its openings.
 */
final class WallOptions {
    /** Openings of a wall up to which every plan is tried. */
    static final int MOST_EXACT = 12;

    private static final int MOST_KEPT = 64;
    private static final int MOST_KEPT_IN_ALL = MOST_KEPT * MOST_KEPT;

    private final LongerWays longer;
    private final int[] places;
    /** [set of methods]: the cheapest that uses exactly these; null where there is none. */
    private final WallOption[] cheapest = new WallOption[1 << Method.values().length];

    private final double leastUsd;

    /**
     * @param places of the options among the ways
     * @param boundUsd that no way of doing the wall costs less than, where the options are not all; else not asked
     */
    private WallOptions(LongerWays longer, int[] places, boolean all, double boundUsd) {
        this.longer = longer;
        this.places = places;
        int[] at = new int[cheapest.length];
        Arrays.fill(at, -1);
        for (int place : places) {
            int set = longer.methods(place);
            at[set] = at[set] < 0 || longer.usd(place) < longer.usd(at[set]) ? place : at[set];
        }
        for (int set = 0; set < at.length; set++) {
            cheapest[set] = at[set] < 0 ? null : longer.option(at[set]);
        }
        leastUsd = all ? cheapest(~0).orElseThrow().usd() : boundUsd;
    }

    /** @param open in the order of the wall's openings */
    static WallOptions of(Wall wall, List<OpenMethods> open) {
        boolean exact = wall.openings().size() <= MOST_EXACT;
        FirstOpenings[] firsts = {FirstOpenings.none()};
        double least = 0;
        for (int o = 0; ; o++) {
            Part part = wall.openings().get(o);
            Way[] ways = open.get(o).ways(part).toArray(Way[]::new);
            least += leastUsd(ways);
            boolean isLast = o == wall.openings().size() - 1;
            if (exact && !isLast) {
                firsts = LongerWays.all(firsts, ways, part.panels());
                continue;
            }
            LongerWays longer = new LongerWays(wall, firsts, ways, part.panels());
            int[] places = exact ? longer.places() : kept(wall, longer);
            if (isLast) {
                return new WallOptions(longer, places, exact, least);
            }
            firsts = Arrays.stream(places).mapToObj(longer::at).toArray(FirstOpenings[]::new);
        }
    }

    private static double leastUsd(Way[] ways) {
        double least = Double.POSITIVE_INFINITY;
        for (Way way : ways) {
            least = Math.min(least, way.horizonUsd());
        }
        return least;
    }

    /** No way of doing the wall costs less, USD; less than the cheapest where not all were tried. */
    double leastUsd() {
        return leastUsd;
    }

    /** Whether no way was left out that could be cheaper. */
    boolean isExact() {
        return leastUsd == cheapest(~0).orElseThrow().usd();
    }

    /** The cheapest that uses no other methods than these; empty where there is none. */
    Optional<WallOption> cheapest(int set) {
        WallOption best = null;
        for (WallOption option : cheapest) {
            if (option != null && option.within(set) && (best == null || option.usd() < best.usd())) {
                best = option;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Those of less than so many USD. */
    List<WallOption> below(double belowUsd) {
        List<WallOption> cheap = new ArrayList<>();
        for (int place : places) {
            if (longer.usd(place) < belowUsd) {
                cheap.add(longer.option(place));
            }
        }
        return cheap;
    }

    private static int[] kept(Wall wall, LongerWays longer) {
        int counts = wall.openings().size() + 1;
        int most = Math.max(1, Math.min(MOST_KEPT, MOST_KEPT_IN_ALL / counts));
        int[] seen = new int[counts];
        return Arrays.stream(longer.places())
                .boxed()
                .sorted(Comparator.comparingDouble(longer::usd))
                .mapToInt(Integer::intValue)
                .filter(place -> seen[longer.at(place).sidings()]++ < most)
                .toArray();
    }
}
