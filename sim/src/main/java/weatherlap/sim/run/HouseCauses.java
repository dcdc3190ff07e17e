package weatherlap.sim.run;

import java.util.List;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.random.Normal;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.random.Streams;

/**
 * The causes of one house, a column a draw, the same under both methods.
 *
 * @param pace of this crew on this job over the tables' minutes, mean 1
 * @param openingPace the same of each opening over its house, in table order over the walls, mean 1
 * @param houseUniform quality of the house's old laps, uniform, high is bad
 * @param crewUniform quality of this crew's work, likewise
 * @param weatherNormal how wet the years of the horizon are, standard normal
 */
@SuppressWarnings("ArrayRecordComponent") // columns of the hot loop
record HouseCauses(
        double[] pace, double[][] openingPace, double[] houseUniform, double[] crewUniform, double[] weatherNormal) {
    static HouseCauses of(House house, Scenario scenario, Streams streams, Sampling sampling, int draws) {
        double openingSpread = scenario.value(Scalar.OPENING_SPREAD);
        List<String> openings = house.elevations().stream()
                .flatMap(e -> e.openings().stream().map(o -> key(e, o)))
                .toList();
        return new HouseCauses(
                Normal.factors(
                        scenario.value(Scalar.CREW_SPREAD),
                        sampling.uniforms(draws, streams.house("pace", house.id()))),
                openings.stream()
                        .map(key -> Normal.factors(
                                openingSpread, sampling.uniforms(draws, streams.opening("pace", house.id(), key))))
                        .toArray(double[][]::new),
                sampling.uniforms(draws, streams.house("old laps", house.id())),
                sampling.uniforms(draws, streams.house("new laps", house.id())),
                Normal.quantiles(sampling.uniforms(draws, streams.house("weather", house.id()))));
    }

    private static String key(Elevation elevation, Opening opening) {
        return elevation.id() + "/" + opening.id();
    }
}
