package weatherlap.sim.run;

import java.util.ArrayList;
import java.util.List;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.laps.AdmittedShares;
import weatherlap.sim.laps.LeakCauses;
import weatherlap.sim.random.Normal;
import weatherlap.sim.random.Uniforms;

/**
 * The causes of one house, a column a draw, the same under both methods.
 *
 * @param pace of this crew on this job over the tables' minutes, mean 1
 * @param openingPace the same of each opening, that over its house times that of the house, in table order over the walls
 * @param leaks those of leaks
 */
@SuppressWarnings("ArrayRecordComponent") // columns of the hot loop
record HouseCauses(double[] pace, double[][] openingPace, LeakCauses leaks) {
    static final String OLD_LAPS = "old laps";
    static final String NEW_LAPS = "new laps";
    static final String WEATHER = "weather";
    private static final String PACE = "pace";

    /** @param admitted see {@link LeakCauses} */
    static HouseCauses of(House house, Scenario scenario, Uniforms uniforms, AdmittedShares admitted) {
        String id = house.id();
        double openingSpread = scenario.value(Scalar.OPENING_SPREAD);
        double[] pace = Normal.factors(scenario.value(Scalar.CREW_SPREAD), uniforms.house(PACE, id));
        List<double[]> openingPace = new ArrayList<>();
        for (Elevation wall : house.elevations()) {
            for (Opening opening : wall.openings()) {
                double[] own = Normal.factors(openingSpread, uniforms.opening(PACE, id, key(wall, opening)));
                for (int d = 0; d < own.length; d++) {
                    own[d] *= pace[d];
                }
                openingPace.add(own);
            }
        }
        return new HouseCauses(pace, openingPace.toArray(double[][]::new), leaks(id, uniforms, admitted));
    }

    /** Those of leaks alone. */
    static LeakCauses leaks(String houseId, Uniforms uniforms, AdmittedShares admitted) {
        return LeakCauses.of(
                admitted,
                uniforms.house(OLD_LAPS, houseId),
                uniforms.house(NEW_LAPS, houseId),
                uniforms.house(WEATHER, houseId));
    }

    private static String key(Elevation elevation, Opening opening) {
        return elevation.id() + "/" + opening.id();
    }
}
