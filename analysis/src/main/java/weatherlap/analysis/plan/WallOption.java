package weatherlap.analysis.plan;

import java.util.List;
import weatherlap.sim.run.PlanParts.Way;

/**
 * One way of doing a wall.
 *
 * @param openings all of the wall
 * @param usd horizon cost without what the house bears once
 */
record WallOption(FirstOpenings openings, double usd) {
    /** In the order of the wall's openings. */
    List<Way> ways() {
        return openings.ways();
    }

    /** Set of the methods used. */
    int methods() {
        return openings.methods();
    }

    /** By draw: chance that all its openings stay dry; not to be changed. */
    double[] dry() {
        return openings.dry();
    }

    boolean within(int set) {
        return (methods() & ~set) == 0;
    }
}
