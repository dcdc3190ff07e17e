package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import weatherlap.sim.run.PlanParts.Part;
import weatherlap.sim.run.PlanParts.Wall;
import weatherlap.sim.run.PlanParts.Way;

/**
 * The ways of doing a wall, the cheapest first: all of them up to {@link #MOST_EXACT} openings. Of a wall with more, opening by opening,
 * the cheapest {@link #MOST_KEPT} of each count of openings done by a method that takes siding down.
 *
 * @param least no way of doing the wall costs less, USD; less than the first where not all were tried
 */
record WallOptions(List<WallOption> all, double least) {
    /** Openings of a wall up to which every plan is tried. */
    static final int MOST_EXACT = 12;

    private static final int MOST_KEPT = 64;

    /** @param open in the order of the wall's openings */
    static WallOptions of(Wall wall, List<OpenMethods> open) {
        List<Partial> partials = List.of(new Partial(List.of(), 0, new BitSet(), 0, 0));
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
        List<WallOption> options = partials.stream()
                .map(partial -> new WallOption(partial.ways, partial.methods, partial.usd(wall)))
                .sorted(Comparator.comparingDouble(WallOption::usd))
                .toList();
        return new WallOptions(options, exact ? options.get(0).usd() : least);
    }

    private static List<Partial> kept(Wall wall, List<Partial> partials) {
        List<Partial> sorted = partials.stream()
                .sorted(Comparator.comparingDouble(partial -> partial.usd(wall)))
                .toList();
        int[] seen = new int[MOST_KEPT * wall.openings().size() + 1];
        return sorted.stream().filter(p -> seen[p.sidings]++ < MOST_KEPT).toList();
    }

    /** The first openings of a wall. */
    private record Partial(List<Way> ways, int methods, BitSet panels, double ownUsd, int sidings) {
        Partial with(Way way, Part part) {
            List<Way> longer = new ArrayList<>(ways);
            longer.add(way);
            boolean siding = way.method().takesSidingDown();
            BitSet down = panels;
            if (siding && !part.panels().isEmpty()) {
                down = (BitSet) panels.clone();
                down.or(part.panels());
            }
            return new Partial(
                    longer,
                    methods | 1 << way.method().ordinal(),
                    down,
                    ownUsd + way.horizonUsd(),
                    sidings + (siding ? 1 : 0));
        }

        double usd(Wall wall) {
            return ownUsd + PlanCost.sharedUsd(wall, methods, panels);
        }
    }
}
