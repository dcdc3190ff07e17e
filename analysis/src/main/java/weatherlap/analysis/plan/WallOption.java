package weatherlap.analysis.plan;

import java.util.List;
import weatherlap.sim.run.PlanParts.Way;

/**
 * One way of doing a wall.
 *
 * @param ways in the order of its openings
 * @param methods set of the methods used
 * @param usd horizon cost without what the house bears once
 */
record WallOption(List<Way> ways, int methods, double usd) {
    /** By draw: chance that all its openings stay dry. */
    double[] dry() {
        return LeastRisk.product(ways);
    }

    boolean within(int set) {
        return (methods & ~set) == 0;
    }
}
