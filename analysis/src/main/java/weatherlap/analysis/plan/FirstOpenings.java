package weatherlap.analysis.plan;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import weatherlap.sim.run.PlanParts.Wall;
import weatherlap.sim.run.PlanParts.Way;

/** One way of doing the first openings of a wall: those before the last, which many ways share, and the last. */
final class FirstOpenings {
    /** No opening at all. */
    static final FirstOpenings NONE = new FirstOpenings(null, null, 0, new BitSet(), 0, 0, 0);

    /** Of so many openings what stays dry is worked out once for all that begin with them: 3⁶ ways at most, 1.5 MB at 256 draws. */
    private static final int SHARED = 6;

    private final FirstOpenings before;
    private final Way last;
    private final int methods;
    private final BitSet panels;
    private final double ownUsd;
    private final int openings;
    private final int sidings;
    private double[] dry;

    private FirstOpenings(
            FirstOpenings before, Way last, int methods, BitSet panels, double ownUsd, int openings, int sidings) {
        this.before = before;
        this.last = last;
        this.methods = methods;
        this.panels = panels;
        this.ownUsd = ownUsd;
        this.openings = openings;
        this.sidings = sidings;
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
                methods | 1 << way.method().ordinal(),
                takesDown ? both(panels, siding) : panels,
                ownUsd + way.horizonUsd(),
                openings + 1,
                sidings + (takesDown ? 1 : 0));
    }

    private static BitSet both(BitSet some, BitSet more) {
        BitSet both = new BitSet(Math.max(some.length(), more.length()));
        both.or(some);
        both.or(more);
        return both;
    }

    /** Set of the methods used. */
    int methods() {
        return methods;
    }

    /** Openings whose method takes siding down. */
    int sidings() {
        return sidings;
    }

    /** In the order of the openings. */
    List<Way> ways() {
        return List.copyOf(waysAfter(NONE.openings));
    }

    private Deque<Way> waysAfter(int opening) {
        Deque<Way> ways = new ArrayDeque<>();
        for (FirstOpenings first = this; first.openings > opening; first = first.before) {
            ways.addFirst(first.last);
        }
        return ways;
    }

    /** Horizon cost without what the house bears once, USD, were they all that the wall has. */
    double usd(Wall wall) {
        return ownUsd + PlanCost.sharedUsd(wall, methods, panels);
    }

    /** By draw: chance that they all stay dry, multiplied in their order; not to be changed. One opening or more. */
    double[] dry() {
        if (openings == 1) {
            return last.dry();
        }
        if (openings > SHARED) {
            return product();
        }
        if (dry == null) {
            dry = before.dry().clone();
            PlanCost.times(dry, last.dry());
        }
        return dry;
    }

    private double[] product() {
        FirstOpenings shared = this;
        while (shared.openings > SHARED) {
            shared = shared.before;
        }
        double[] product = shared.dry().clone();
        waysAfter(SHARED).forEach(way -> PlanCost.times(product, way.dry()));
        return product;
    }
}
