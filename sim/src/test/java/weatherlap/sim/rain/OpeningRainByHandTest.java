package weatherlap.sim.rain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import weatherlap.sim.assumptions.Joint;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.house.Terrain;

/** One window of 36 × 60 in., its sill 3 ft over grade, in a wall of 10 ft without an overhang, worked out on paper. */
class OpeningRainByHandTest {
    private static final int HOURS = 8760;
    private static final double WIDTH_M = 36 * 0.0254;
    private static final double HEIGHT_M = 60 * 0.0254;
    private static final double SILL_M = 36 * 0.0254;
    private static final double ABOVE_M = 24 * 0.0254;
    private static final double JOINT_STRIP_M = 2 * 0.0254;
    private static final double FIELD_STRIP_M = 12 * 0.0254;
    private static final double RUNOFF = 0.3;

    private static final RainClimate CLIMATE =
            RainClimate.of(RainFixtures.steady(HOURS, 90, 5, 2), RainFixtures.scenario());
    private static final Opening WINDOW = RainFixtures.opening(3);
    private static final Elevation WALL = RainFixtures.elevation(90, 10, 0, WINDOW);
    private static final House HOUSE = RainFixtures.house(1, Terrain.SUBURBAN, WALL);

    private final OpeningRain rain = OpeningRain.of(CLIMATE, HOUSE, WALL, WINDOW, RainFixtures.scenario());
    private final OpeningExposure exposure = rain.exposure();

    @Test
    void theWindIsThatAtTheMiddleOfTheWindow() {
        double middle = SILL_M + HEIGHT_M / 2;
        double wallOverAirfield = Iso15927.roughness(Terrain.SUBURBAN, middle) * 0.5;
        assertThat(exposure.freeLitresPerM2Year())
                .isCloseTo(CLIMATE.wall(90).isoLitresPerM2Year() * wallOverAirfield, within(1e-9));
        assertThat(rain.headShare()).isEqualTo(1);
        assertThat(rain.middleShare()).isEqualTo(1);
        assertThat(rain.sillShare()).isEqualTo(1);
    }

    @Test
    void whatArrivesAtEachJoint() {
        double free = exposure.freeLitresPerM2Year();
        double jambs = 2 * JOINT_STRIP_M * HEIGHT_M;
        double sill = WIDTH_M * HEIGHT_M;
        check(Joint.HEAD, free * WIDTH_M * ABOVE_M * RUNOFF);
        check(Joint.JAMB, free * jambs);
        check(Joint.SILL, free * sill);
        check(Joint.CORNER, free * (jambs + sill * 2 * JOINT_STRIP_M / WIDTH_M));
        check(Joint.FIELD, free * (2 * FIELD_STRIP_M * (HEIGHT_M + FIELD_STRIP_M) + WIDTH_M * FIELD_STRIP_M));
    }

    private void check(Joint joint, double litres) {
        assertThat(exposure.litresPerYear(joint)).as(joint.name()).isCloseTo(litres, within(1e-9));
    }

    /** A sill on the ground has no band below it. */
    @Test
    void theBandAroundAWindowEndsAtTheGround() {
        Opening low = RainFixtures.opening(0.5);
        Elevation wall = RainFixtures.elevation(90, 10, 0, low);
        OpeningExposure there = OpeningRain.of(
                        CLIMATE, RainFixtures.house(1, Terrain.SUBURBAN, wall), wall, low, RainFixtures.scenario())
                .exposure();
        double below = 6 * 0.0254;
        assertThat(there.litresPerYear(Joint.FIELD))
                .isCloseTo(
                        there.freeLitresPerM2Year() * (2 * FIELD_STRIP_M * (HEIGHT_M + below) + WIDTH_M * below),
                        within(1e-9));
    }

    @Test
    void theThirdOpinionOnTheSameHours() {
        assertThat(Straube.hourlyLitresPerM2(0.5, 0.2, 4, 3, 0.8)).isCloseTo(0.96, within(1e-12));
        WallRain facing = CLIMATE.wall(90);
        double hour = Straube.hourlyLitresPerM2(1, Raindrop.drivingRainFactor(2), 5, 2, 1);
        assertThat(facing.straubeLitresPerM2Year()).isCloseTo(hour * HOURS, within(hour * HOURS * 0.001));
        assertThat(facing.wetHours()).isEqualTo(HOURS);
        assertThat(CLIMATE.wall(270).straubeLitresPerM2Year()).isZero();
        assertThat(CLIMATE.wall(270).wetHours()).isZero();
    }

    @Test
    void sharesOfTheRainThatIsNotDriven() {
        RainCoverage coverage = new RainCoverage(100, 1, 0, 0, 0, 10, 1, 2, 200, 10, 50, 3);
        assertThat(coverage.calmRain()).isEqualTo(0.25);
        assertThat(coverage.rainLeftOut()).isEqualTo(0.05);
        assertThat(new RainCoverage(100, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 3).calmRain())
                .isZero();
    }

    @Test
    void weatherKeepsItsNameItsTimesAndWhetherItKnowsTheWinds() {
        HourlyWeather weather = RainFixtures.steady(48, 90, 5, 2);
        assertThat(weather.named("other").name()).isEqualTo("other");
        assertThat(weather.shifted(-1).year(0)).isEqualTo(2000);
        assertThat(weather.year(0)).isEqualTo(2001);
        assertThat(CLIMATE.name()).isEqualTo("steady");
        assertThat(CLIMATE.anyBearing()).isFalse();
        assertThat(RainClimate.of(weather.ofAnyBearing(), RainFixtures.scenario())
                        .anyBearing())
                .isTrue();
    }
}
