package weatherlap.analysis.plan;

import java.util.List;
import weatherlap.sim.run.PlanParts.Way;

/**
 * One way of doing a wall.
 *
 * @param ways in the order of the wall's openings
 * @param methods set of the methods used
 * @param usd horizon cost without what the house bears once
 */
record WallOption(List<Way> ways, int methods, double usd) {
    WallOption {
        ways = List.copyOf(ways);
    }

    /** By draw: chance that all its openings stay dry, multiplied in their order; not to be changed. */
    double[] dry() {
        return ways.size() == 1 ? ways.get(0).dry() : LeastRisk.product(ways);
    }

    boolean within(int set) {
        return (methods & ~set) == 0;
    }

    /** A set of methods with that of one more way. */
    static int methodsWith(int methods, Way more) {
        return methods | 1 << more.method().ordinal();
    }
}
