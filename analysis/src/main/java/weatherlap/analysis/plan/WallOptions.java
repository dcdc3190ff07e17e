package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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

    private final WallOption[] options;
    /** [set of methods]: the cheapest that uses exactly these; null where there is none. */
    private final WallOption[] cheapest = new WallOption[1 << Method.values().length];

    private final double leastUsd;

    /** @param boundUsd that no way of doing the wall costs less than, where the options are not all; else not asked */
    private WallOptions(WallOption[] options, boolean all, double boundUsd) {
        this.options = options;
        for (WallOption option : options) {
            WallOption best = cheapest[option.methods()];
            if (best == null || option.usd() < best.usd()) {
                cheapest[option.methods()] = option;
            }
        }
        leastUsd = all ? cheapest(~0).orElseThrow().usd() : boundUsd;
    }

    /** @param open in the order of the wall's openings */
    static WallOptions of(Wall wall, List<OpenMethods> open) {
        FirstOpenings[] firsts = {FirstOpenings.none()};
        boolean exact = wall.openings().size() <= MOST_EXACT;
        double least = 0;
        for (int o = 0; o < wall.openings().size(); o++) {
            Part part = wall.openings().get(o);
            Way[] ways = open.get(o).ways(part).toArray(Way[]::new);
            FirstOpenings[] longer = new FirstOpenings[firsts.length * ways.length];
            int count = 0;
            for (FirstOpenings first : firsts) {
                for (Way way : ways) {
                    longer[count++] = first.with(way, part.panels());
                }
            }
            firsts = exact ? longer : kept(wall, longer);
            least += leastUsd(ways);
        }
        WallOption[] options = new WallOption[firsts.length];
        for (int i = 0; i < options.length; i++) {
            options[i] = new WallOption(firsts[i], firsts[i].usd(wall));
        }
        return new WallOptions(options, exact, least);
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
        for (WallOption option : options) {
            if (option.usd() < belowUsd) {
                cheap.add(option);
            }
        }
        return cheap;
    }

    private static FirstOpenings[] kept(Wall wall, FirstOpenings[] firsts) {
        record Priced(FirstOpenings openings, double usd) {}
        Stream<FirstOpenings> sorted = Arrays.stream(firsts)
                .map(first -> new Priced(first, first.usd(wall)))
                .sorted(Comparator.comparingDouble(Priced::usd))
                .map(Priced::openings);
        int counts = wall.openings().size() + 1;
        int most = Math.max(1, Math.min(MOST_KEPT, MOST_KEPT_IN_ALL / counts));
        int[] seen = new int[counts];
        return sorted.filter(first -> seen[first.sidings()]++ < most).toArray(FirstOpenings[]::new);
    }
}
