package weatherlap.sim.rain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Joint;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.Terrain;

@Label("The water that arrives at an opening")
class OpeningRainPropertyTest {
    private static final Scenario SCENARIO = RainFixtures.scenario();
    private static final HourlyWeather WEATHER = RainFixtures.random(2, 1);
    private static final RainClimate CLIMATE = RainClimate.of(WEATHER, SCENARIO);

    @Property(tries = 40)
    @Label("never falls with more rain")
    void moreRainNeverDriesAnOpening(
            @ForAll @DoubleRange(min = 1, max = 3) double times,
            @ForAll @DoubleRange(min = 0, max = 359) double bearing) {
        // Under an eave bigger drops fall more steeply, so that is no law there: it holds for a wall without one.
        assertNeverLess(
                arriving(CLIMATE, RainFixtures.elevation(bearing, 18, 0)),
                arriving(RainClimate.of(wetter(times), SCENARIO), RainFixtures.elevation(bearing, 18, 0)));
    }

    @Property(tries = 40)
    @Label("never falls with more wet hours, under any eave")
    void moreWetHours(
            @ForAll @DoubleRange(min = 0, max = 359) double bearing,
            @ForAll @DoubleRange(min = 0, max = 40) double overhangIn) {
        double[] rain = WEATHER.rainMm().clone();
        for (int t = 0; t < rain.length; t += 50) {
            rain[t] = rain[t] == 0 ? 2 : rain[t];
        }
        assertNeverLess(
                arriving(CLIMATE, RainFixtures.elevation(bearing, 18, overhangIn)),
                arriving(RainClimate.of(with(rain), SCENARIO), RainFixtures.elevation(bearing, 18, overhangIn)));
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    @Label("never falls with less overhang")
    void lessOverhangNeverDriesAnOpening(
            @ForAll @DoubleRange(min = 0, max = 359) double bearing,
            @ForAll @DoubleRange(min = 0, max = 40) double overhangIn,
            @ForAll @DoubleRange(min = 0, max = 1) double kept) {
        assertNeverLess(
                arriving(CLIMATE, RainFixtures.elevation(bearing, 18, overhangIn)),
                arriving(CLIMATE, RainFixtures.elevation(bearing, 18, overhangIn * kept)));
    }

    @Property(tries = 40)
    @Label("never rises with an obstacle, the less so the further it is")
    void anObstacleNeverWetsAWall(@ForAll @DoubleRange(min = 1, max = 150) double distance) {
        Elevation open = RainFixtures.elevation(90, 18, 12);
        double[] behind = arriving(CLIMATE, RainFixtures.obstructed(open, distance));
        assertNeverLess(behind, arriving(CLIMATE, open));
        assertNeverLess(behind, arriving(CLIMATE, RainFixtures.obstructed(open, distance + 20)));
    }

    @Property(tries = 40)
    @Label("is the wall factor's share, without the hourly overhang, where the scenario says so: never both")
    void publishedWallFactor(@ForAll @DoubleRange(min = 1, max = 60) double overhangIn) {
        Scenario published = SCENARIO.with(Choice.SHELTER, "wall_factor");
        var window = RainFixtures.opening(3);
        var wall = RainFixtures.elevation(90, 18, overhangIn);
        var exposure = OpeningRain.of(CLIMATE, RainFixtures.house(2, Terrain.SUBURBAN, wall), wall, window, published)
                .exposure();
        double roughness = Iso15927.roughness(Terrain.SUBURBAN, (36 + 30) * 0.0254);
        assertThat(exposure.litresPerM2Year() / (CLIMATE.wall(90).isoLitresPerM2Year() * roughness))
                .isCloseTo(0.3, within(1e-12));
    }

    private static HourlyWeather wetter(double times) {
        return with(Arrays.stream(WEATHER.rainMm()).map(r -> r * times).toArray());
    }

    private static HourlyWeather with(double[] rainMm) {
        return new HourlyWeather(
                WEATHER.name(),
                WEATHER.start(),
                WEATHER.windFromDeg(),
                WEATHER.windMetresPerSecond(),
                rainMm,
                WEATHER.temperatureC());
    }

    private static double[] arriving(RainClimate climate, Elevation wall) {
        var window = RainFixtures.opening(3);
        var exposure = OpeningRain.of(climate, RainFixtures.house(2, Terrain.SUBURBAN, wall), wall, window, SCENARIO)
                .exposure();
        return Arrays.stream(Joint.values())
                .mapToDouble(exposure::litresPerYear)
                .toArray();
    }

    private static void assertNeverLess(double[] before, double[] after) {
        for (int i = 0; i < before.length; i++) {
            assertThat(after[i]).isGreaterThanOrEqualTo(before[i] * (1 - 1e-12));
        }
    }
}
