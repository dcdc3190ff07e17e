package weatherlap.analysis.plan;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import weatherlap.sim.run.PlanParts.Wall;
import weatherlap.sim.run.PlanParts.Way;

/** One way of doing the first openings of a wall: those before the last, which many ways share, and the last. */
final class FirstOpenings {
    /** Of so many openings what stays dry is worked out once for all that begin with them: 3⁶ ways at most, 1.5 MB at 256 draws. */
    private static final int SHARED = 6;

    /** Siding panels that are taken down; with those of one more opening, which many ways ask for in turn, they are joined once. */
    private static final class Panels {
        private final BitSet down;
        private final int count;
        private BitSet siding;
        private Panels joined;

        Panels(BitSet down) {
            this.down = down;
            count = down.cardinality();
        }

        Panels with(BitSet more) {
            if (siding != more) {
                BitSet both = new BitSet();
                both.or(down);
                both.or(more);
                siding = more;
                joined = new Panels(both);
            }
            return joined;
        }
    }

    private final FirstOpenings before;
    private final Way last;
    private final int methods;
    private final Panels panels;
    private final double ownUsd;
    private final int openings;
    private final int sidings;
    private double[] dry;

    private FirstOpenings(
            FirstOpenings before, Way last, int methods, Panels panels, double ownUsd, int openings, int sidings) {
        this.before = before;
        this.last = last;
        this.methods = methods;
        this.panels = panels;
        this.ownUsd = ownUsd;
        this.openings = openings;
        this.sidings = sidings;
    }

    /** No opening at all. */
    static FirstOpenings none() {
        return new FirstOpenings(null, null, 0, new Panels(new BitSet()), 0, 0, 0);
    }

    /**
     * One more opening.
     *
     * @param siding panels to take down for it, where its method does
     */
    FirstOpenings with(Way way, BitSet siding) {
        boolean takesDown = way.method().takesSidingDown();
        return new FirstOpenings(
                this,
                way,
                methodsWith(way),
                takesDown ? panels.with(siding) : panels,
                ownUsd + way.horizonUsd(),
                openings + 1,
                sidings + (takesDown ? 1 : 0));
    }

    /** The way of the last; null for no opening at all. */
    Way last() {
        return last;
    }

    /** Set of the methods used. */
    int methods() {
        return methods;
    }

    /** The same with that of one more opening. */
    int methodsWith(Way more) {
        return methods | 1 << more.method().ordinal();
    }

    /** Openings whose method takes siding down. */
    int sidings() {
        return sidings;
    }

    /** In the order of the openings. */
    List<Way> ways() {
        return List.copyOf(waysAfter(0));
    }

    private Deque<Way> waysAfter(int opening) {
        Deque<Way> ways = new ArrayDeque<>();
        for (FirstOpenings first = this; first.openings > opening; first = first.before) {
            ways.addFirst(first.last);
        }
        return ways;
    }

    /** Siding panels that are taken down. */
    int panels() {
        return panels.count;
    }

    /** The same with those of one more opening. */
    int panels(BitSet siding) {
        return panels.with(siding).count;
    }

    /**
     * Horizon cost with one more opening and without what the house bears once, USD, were they all that the wall has.
     *
     * @param moreUsd of the one more opening for itself
     * @param methods with its own
     * @param panels likewise
     */
    double usd(Wall wall, double moreUsd, int methods, int panels) {
        return ownUsd + moreUsd + PlanCost.sharedUsd(wall, methods, panels);
    }

    /** By draw: chance that they all stay dry, multiplied in their order; not to be changed. One opening or more. */
    double[] dry() {
        if (openings > SHARED) {
            return product();
        }
        if (dry == null) {
            dry = before.dryWith(last);
        }
        return dry;
    }

    /** The same with one more opening; of no opening as well. */
    double[] dryWith(Way more) {
        return openings == 0 ? more.dry() : PlanCost.product(dry(), more.dry());
    }

    private double[] product() {
        FirstOpenings shared = this;
        while (shared.openings > SHARED) {
            shared = shared.before;
        }
        Deque<Way> ways = waysAfter(SHARED);
        double[] product = PlanCost.product(shared.dry(), ways.removeFirst().dry());
        for (Way way : ways) {
            PlanCost.times(product, way.dry());
        }
        return product;
    }
}
