package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.List;
import weatherlap.sim.run.PlanParts.Way;

/**
 * One way of doing a wall.
 *
 * @param before all openings but the last
 * @param last way of the last
 * @param usd horizon cost without what the house bears once
 */
record WallOption(FirstOpenings before, Way last, double usd) {
    /** In the order of the wall's openings. */
    List<Way> ways() {
        List<Way> ways = new ArrayList<>(before.ways());
        ways.add(last);
        return ways;
    }

    /** Set of the methods used. */
    int methods() {
        return before.methodsWith(last);
    }

    /** By draw: chance that all its openings stay dry; not to be changed. */
    double[] dry() {
        return before.dryWith(last);
    }

    /** By draw: chance that all before the last stay dry; not to be changed. */
    double[] dryBefore() {
        return before.last() == null ? PlanCost.ones(last.dry().length) : before.dry();
    }

    boolean within(int set) {
        return (methods() & ~set) == 0;
    }
}
