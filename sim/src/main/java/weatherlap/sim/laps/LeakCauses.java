package weatherlap.sim.laps;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The causes that openings share, a column a draw; both methods are given the same.
 *
 * @param logAdmitted natural logarithm of the admitted share of each fault, by position of the fault in its table; the same for all houses
 * @param houseUniform quality of the house's old laps, uniform on [0, 1), high is bad
 * @param crewUniform quality of this crew's work, likewise
 * @param weatherNormal standard normal: how wet the years of the horizon are
 */
@SuppressWarnings("ArrayRecordComponent") // columns of the hot loop; compared by nobody
public record LeakCauses(double[][] logAdmitted, double[] houseUniform, double[] crewUniform, double[] weatherNormal) {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    public LeakCauses {
        if (crewUniform.length != houseUniform.length || weatherNormal.length != houseUniform.length) {
            throw new IllegalArgumentException("The columns of causes must be equally long.");
        }
    }

    /**
     * The causes of one house from uniforms.
     *
     * @param weatherUniform on (0, 1)
     */
    public static LeakCauses of(
            double[][] logAdmitted, double[] houseUniform, double[] crewUniform, double[] weatherUniform) {
        double[] normal = new double[weatherUniform.length];
        for (int d = 0; d < normal.length; d++) {
            normal[d] = STANDARD.inverseCumulativeProbability(weatherUniform[d]);
        }
        return new LeakCauses(logAdmitted, houseUniform, crewUniform, normal);
    }

    public int draws() {
        return houseUniform.length;
    }

    /** Logarithms of shares; of 0, minus infinity, which lets nothing in. Once a run. */
    public static double[][] logarithms(double[][] shares) {
        double[][] logs = new double[shares.length][];
        for (int row = 0; row < shares.length; row++) {
            logs[row] = shares[row].clone();
            for (int d = 0; d < logs[row].length; d++) {
                logs[row][d] = Math.log(logs[row][d]);
            }
        }
        return logs;
    }
}
