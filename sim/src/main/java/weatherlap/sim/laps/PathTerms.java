package weatherlap.sim.laps;

import weatherlap.sim.assumptions.FaultKind;

/**
 * A path of water in the numbers that the draws need of it.
 *
 * @param standing by stratum of the quality
 * @param firstPosition where in the table its water lies, all of it let in and the weather as it is on average
 * @param knotsPerNormal how far a standard normal of the weather shifts that
 * @param covered whether the shop mends its damage within the warranty
 */
@SuppressWarnings("ArrayRecordComponent") // column of the hot loop
record PathTerms(
        LeakPath path,
        double[] standing,
        LeakTable table,
        double firstPosition,
        double knotsPerNormal,
        boolean covered) {

    /**
     * @param logLitres logarithm of the litres a year at the joint of the path
     * @param variance σ² of the weather
     */
    static PathTerms of(
            LeakPath path, double[] standing, LeakTable table, double logLitres, double variance, boolean covered) {
        return new PathTerms(
                path,
                standing,
                table,
                (logLitres - variance / 2 - table.lowest) * table.knotsPerLog,
                table.knotsPerLog * Math.sqrt(variance),
                covered);
    }

    int fault() {
        return path.faultIndex();
    }

    /** Quality of those who made the fault, by draw. */
    int[] stratum(LeakCauses causes) {
        return path.fault().kind() == FaultKind.NEW ? causes.crewStratum() : causes.houseStratum();
    }

    /** Whether a draw may do damage. */
    boolean isWet(double logAdmitted, double weatherNormal) {
        return firstPosition + table.knotsPerLog * logAdmitted + knotsPerNormal * weatherNormal > table.lastDry;
    }

    /** Whether another path of the same fault does the same in every draw. */
    boolean sameDraws(PathTerms other) {
        return firstPosition == other.firstPosition
                && knotsPerNormal == other.knotsPerNormal
                && standing == other.standing
                && table == other.table
                && covered == other.covered;
    }
}
