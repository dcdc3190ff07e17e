package weatherlap.sim.laps;

import weatherlap.sim.Check;
import weatherlap.sim.assumptions.LapFault;

/**
 * One way that water takes into the wall at an opening: past a first line and through one lap fault. Expected litres are closed forms,
 * since the fault, the seal, the admitted share and the weather are independent causes.
 *
 * @param faultIndex position of the fault in its table
 * @param prior probability that the fault stands, before anyone looked
 * @param probability the same after the evidence
 * @param arrivingLitresPerYear water that reaches the joint, mean of the years, L a year
 * @param passesFirstLine mean share of it that passes the first line over the horizon, 0 to 1
 */
public record LeakPath(
        int faultIndex,
        LapFault fault,
        double prior,
        double probability,
        double arrivingLitresPerYear,
        double passesFirstLine) {
    public LeakPath {
        Check.fraction("prior", prior);
        Check.fraction("probability after the evidence", probability);
        Check.notNegative("arriving water", arrivingLitresPerYear);
        Check.fraction("share past the first line", passesFirstLine);
    }

    /** Expected water that reaches the lap, L a year. */
    public double pastFirstLineLitresPerYear() {
        return arrivingLitresPerYear * passesFirstLine;
    }

    /** Expected water that gets into the wall, L a year: past the first line, admitted where the fault stands. */
    public double intoWallLitresPerYear() {
        return pastFirstLineLitresPerYear() * fault.admitted().mean() * probability;
    }
}
