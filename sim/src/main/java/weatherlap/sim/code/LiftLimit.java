package weatherlap.sim.code;

import weatherlap.sim.Check;

/**
 * The revised NIOSH lifting equation in US units, for one lift by one person:
 *
 * <pre>  RWL = 51 lb · (10/H) · (1 − 0.0075 |V − 30|) · (0.82 + 1.8/D) · (1 − 0.0032 A) · FM · CM</pre>
 *
 * H is taken as at least 10 in. and D as at least 10 in.; beyond H 25, V 0–70, D 70 in. or A 135° the limit is 0. It is an ideal-lift
 * recommendation and no legal limit.
 *
 * @see "Waters, Putz-Anderson, Garg: Applications Manual for the Revised NIOSH Lifting Equation, DHHS (NIOSH) 94-110, 1994"
 */
public final class LiftLimit {
    private static final double LOAD_CONSTANT_LB = 51;

    private LiftLimit() {}

    /**
     * The recommended weight limit, lb.
     *
     * @param reachIn H, hands from the ankles, in.
     * @param heightIn V, hands over the floor at the start, in.
     * @param travelIn D, up or down, in.
     * @param twistDeg A, off the front, degrees
     * @param frequency FM, fraction
     * @param coupling CM, fraction
     */
    public static double recommendedLb(
            double reachIn, double heightIn, double travelIn, double twistDeg, double frequency, double coupling) {
        Check.fraction("frequency multiplier", frequency);
        Check.fraction("coupling multiplier", coupling);
        if (reachIn > 25 || heightIn < 0 || heightIn > 70 || travelIn > 70 || twistDeg > 135) {
            return 0;
        }
        return LOAD_CONSTANT_LB
                * (10 / Math.max(10, reachIn))
                * (1 - 0.0075 * Math.abs(heightIn - 30))
                * (0.82 + 1.8 / Math.max(10, travelIn))
                * (1 - 0.0032 * twistDeg)
                * frequency
                * coupling;
    }
}
