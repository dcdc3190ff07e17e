package weatherlap.analysis.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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

    private final List<WallOption> options;
    private final double leastUsd;

    private WallOptions(List<WallOption> options, double leastUsd) {
        this.options = options;
        this.leastUsd = leastUsd;
    }

    /** @param open in the order of the wall's openings */
    static WallOptions of(Wall wall, List<OpenMethods> open) {
        List<Partial> partials = List.of(new Partial(null, null, 0, new BitSet(), 0, 0));
        boolean exact = wall.openings().size() <= MOST_EXACT;
        double least = 0;
        for (int o = 0; o < wall.openings().size(); o++) {
            Part part = wall.openings().get(o);
            List<Way> ways = open.get(o).ways(part);
            List<Partial> longer = new ArrayList<>(partials.size() * ways.size());
            partials.forEach(partial -> ways.forEach(way -> longer.add(partial.with(way, part))));
            partials = exact ? longer : kept(wall, longer);
            least += ways.stream().mapToDouble(Way::horizonUsd).min().orElseThrow();
        }
        List<WallOption> options = new ArrayList<>(partials.size());
        for (Partial partial : partials) {
            options.add(new WallOption(partial.ways(), partial.methods, partial.usd(wall)));
        }
        return new WallOptions(
                options, exact ? cheapest(options, ~0).orElseThrow().usd() : least);
    }

    /** No way of doing the wall costs less, USD; less than the cheapest where not all were tried. */
    double leastUsd() {
        return leastUsd;
    }

    /** Whether no way was left out that could be cheaper. */
    boolean isExact() {
        return leastUsd == cheapest(options, ~0).orElseThrow().usd();
    }

    /** The cheapest that uses no other methods than these; empty where there is none. */
    Optional<WallOption> cheapest(int set) {
        return cheapest(options, set);
    }

    private static Optional<WallOption> cheapest(List<WallOption> options, int set) {
        WallOption best = null;
        for (WallOption option : options) {
            if (option.within(set) && (best == null || option.usd() < best.usd())) {
                best = option;
            }
        }
        return Optional.ofNullable(best);
    }

    /** The cheapest first. */
    List<WallOption> cheapestFirst() {
        return options.stream()
                .sorted(Comparator.comparingDouble(WallOption::usd))
                .toList();
    }

    private static List<Partial> kept(Wall wall, List<Partial> partials) {
        record Priced(Partial partial, double usd) {}
        Stream<Partial> sorted = partials.stream()
                .map(partial -> new Priced(partial, partial.usd(wall)))
                .sorted(Comparator.comparingDouble(Priced::usd))
                .map(Priced::partial);
        int counts = wall.openings().size() + 1;
        int most = Math.max(1, Math.min(MOST_KEPT, MOST_KEPT_IN_ALL / counts));
        int[] seen = new int[counts];
        return sorted.filter(p -> seen[p.sidings]++ < most).toList();
    }

    /** The first openings of a wall: those before the last, which many share, and the last. */
    private record Partial(Partial before, Way last, int methods, BitSet panels, double ownUsd, int sidings) {
        Partial with(Way way, Part part) {
            boolean siding = way.method().takesSidingDown();
            BitSet down = panels;
            if (siding && !part.panels().isEmpty()) {
                down = (BitSet) panels.clone();
                down.or(part.panels());
            }
            return new Partial(
                    this,
                    way,
                    methods | 1 << way.method().ordinal(),
                    down,
                    ownUsd + way.horizonUsd(),
                    sidings + (siding ? 1 : 0));
        }

        List<Way> ways() {
            Deque<Way> ways = new ArrayDeque<>();
            for (Partial partial = this; partial.last != null; partial = partial.before) {
                ways.addFirst(partial.last);
            }
            return List.copyOf(ways);
        }

        double usd(Wall wall) {
            return ownUsd + PlanCost.sharedUsd(wall, methods, panels);
        }
    }
}
