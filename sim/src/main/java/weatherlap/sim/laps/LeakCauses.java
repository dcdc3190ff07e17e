package weatherlap.sim.laps;

import weatherlap.sim.random.Normal;

/**
 * The causes that openings share, a column a draw; both methods are given the same.
 *
 * @param admitted the same for all houses
 * @param houseStratum quality of the house's old laps, as the number of its stratum of {@link QualityStrata}, high is bad
 * @param crewStratum quality of this crew's work, likewise
 * @param weatherNormal standard normal: how wet the years of the horizon are
 */
@SuppressWarnings("ArrayRecordComponent") // columns of the hot loop; compared by nobody
public record LeakCauses(AdmittedShares admitted, int[] houseStratum, int[] crewStratum, double[] weatherNormal) {
    /**
     * The causes of one house from uniforms on (0, 1), all equally many.
     *
     * @param oldLaps quality of the house's old laps, high is bad
     * @param newLaps quality of this crew's work, likewise
     * @param weather how wet the years of the horizon are
     */
    public static LeakCauses of(AdmittedShares admitted, double[] oldLaps, double[] newLaps, double[] weather) {
        return new LeakCauses(
                admitted, QualityStrata.stratum(oldLaps), QualityStrata.stratum(newLaps), Normal.quantiles(weather));
    }

    /** The greatest {@link #weatherNormal}. */
    double wettest() {
        double wettest = weatherNormal[0];
        for (double normal : weatherNormal) {
            wettest = normal > wettest ? normal : wettest;
        }
        return wettest;
    }

    public int draws() {
        return houseStratum.length;
    }
}
