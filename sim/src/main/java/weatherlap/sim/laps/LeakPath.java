package weatherlap.sim.laps;

import java.util.Arrays;
import java.util.List;
import weatherlap.sim.Check;
import weatherlap.sim.assumptions.Joint;
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

    /**
     * Water expected past the first lines of an opening, L a year: at each joint what passes the weakest of the lines that have a fault
     * standing behind them. With faults taken one by one as independent, weakest first, that is W Σ_f s_f p_f ∏_{g before f} (1 − p_g).
     */
    public static double expectedPastFirstLine(List<LeakPath> paths) {
        double[] noneWeaker = new double[Joint.values().length];
        Arrays.fill(noneWeaker, 1);
        double litres = 0;
        for (LeakPath path : weakestFirst(paths)) {
            int joint = path.fault().joint().ordinal();
            double none = noneWeaker[joint];
            litres += none * path.probability() * path.pastFirstLineLitresPerYear();
            noneWeaker[joint] = none * (1 - path.probability());
        }
        return litres;
    }

    /** By insertion: an opening has a dozen. */
    private static LeakPath[] weakestFirst(List<LeakPath> paths) {
        LeakPath[] sorted = new LeakPath[paths.size()];
        for (int f = 0; f < sorted.length; f++) {
            LeakPath path = paths.get(f);
            int place = f;
            while (place > 0 && sorted[place - 1].passesFirstLine < path.passesFirstLine) {
                sorted[place] = sorted[place - 1];
                place--;
            }
            sorted[place] = path;
        }
        return sorted;
    }

    /** Expected water that gets into the wall, L a year: past the first line, admitted where the fault stands. */
    public double intoWallLitresPerYear() {
        return pastFirstLineLitresPerYear() * fault.admitted().mean() * probability;
    }
}
