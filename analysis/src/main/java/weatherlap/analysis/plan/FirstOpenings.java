package weatherlap.analysis.plan;

import java.util.Arrays;
import java.util.BitSet;
import weatherlap.sim.run.PlanParts.Wall;
import weatherlap.sim.run.PlanParts.Way;

/**
 * One way of doing the first openings of a wall: those before the last, which many ways share, and the last.
 *
 * @param before all but the last; null for no opening at all
 * @param last way of the last; null likewise
 * @param methods set of the methods used
 * @param down siding panels that are taken down; not to be changed
 * @param ownUsd horizon cost of the openings for themselves
 * @param usd horizon cost without what the house bears once, were they all that the wall has
 * @param sidings openings whose method takes siding down
 */
record FirstOpenings(
        FirstOpenings before,
        Way last,
        int methods,
        BitSet down,
        double ownUsd,
        double usd,
        int openings,
        int sidings) {
    /** No opening at all. */
    static final FirstOpenings NONE = new FirstOpenings(null, null, 0, new BitSet(), 0, 0, 0, 0);

    /** One more opening of the wall. */
    FirstOpenings with(Way way, Wall wall) {
        boolean takesDown = way.method().takesSidingDown();
        int more = WallOption.methodsWith(methods, way);
        BitSet panels = takesDown ? joined(down, wall.openings().get(openings).panels()) : down;
        double usd = ownUsd + way.horizonUsd();
        return new FirstOpenings(
                this,
                way,
                more,
                panels,
                usd,
                usd + PlanCost.sharedUsd(wall, more, panels.cardinality()),
                openings + 1,
                sidings + (takesDown ? 1 : 0));
    }

    private static BitSet joined(BitSet some, BitSet more) {
        BitSet joined = new BitSet();
        joined.or(some);
        joined.or(more);
        return joined;
    }

    /** As an option of a wall that has no more. */
    WallOption option() {
        Way[] ways = new Way[openings];
        for (FirstOpenings first = this; first.openings > 0; first = first.before) {
            ways[first.openings - 1] = first.last;
        }
        return new WallOption(Arrays.asList(ways), methods, usd);
    }
}
