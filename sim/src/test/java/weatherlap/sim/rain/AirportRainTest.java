package weatherlap.sim.rain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Validation: a year at an airport, against sums made apart from this code (half a unit in the last digit given). */
class AirportRainTest {
    private static final double[] BEARINGS = {0, 45, 90, 135, 180, 225, 270, 315};

    private static RainClimate climate;

    @BeforeAll
    static void read() {
        climate = RainClimate.of(Airports.hourly("newark"), RainFixtures.scenario());
    }

    @Test
    @DisplayName("airfield indices of ISO 15927-3 at eight bearings, Seattle 2014, to 0.01 %")
    void seattle() {
        double[] expected = {70.610, 137.505, 267.653, 480.891, 564.144, 398.896, 143.781, 44.319};
        RainClimate seattle = RainClimate.of(Airports.hourly("seattle"), RainFixtures.scenario());
        for (int i = 0; i < BEARINGS.length; i++) {
            assertThat(seattle.wall(BEARINGS[i]).isoLitresPerM2Year()).isCloseTo(expected[i], withinPercentage(0.01));
        }
    }

    @Test
    @DisplayName("airfield indices of ISO 15927-3 at eight bearings")
    void airfieldIndices() {
        double[] expected = {470.199, 499.447, 371.106, 257.607, 243.974, 283.788, 292.344, 361.879};
        for (int i = 0; i < BEARINGS.length; i++) {
            assertThat(climate.wall(BEARINGS[i]).isoLitresPerM2Year()).isCloseTo(expected[i], within(5e-4));
        }
    }

    @Test
    @DisplayName("ASHRAE 160 loads with F_E = F_D = 1 at eight bearings")
    void ashraeLoads() {
        double[] expected = {474.306, 507.943, 381.084, 266.248, 252.047, 302.961, 313.455, 375.588};
        for (int i = 0; i < BEARINGS.length; i++) {
            assertThat(climate.wall(BEARINGS[i]).ashraeLitresPerM2Year()).isCloseTo(expected[i], within(5e-4));
        }
    }

    @Test
    @DisplayName("worst spell of ISO 15927-3 at eight bearings")
    void worstSpells() {
        double[] expected = {108.15, 146.02, 111.19, 47.93, 45.65, 61.58, 51.86, 42.89};
        for (int i = 0; i < BEARINGS.length; i++) {
            assertThat(climate.wall(BEARINGS[i]).worstSpellLitresPerM2()).isCloseTo(expected[i], within(5e-3));
        }
    }

    @Test
    @DisplayName("rain, mean wind and what is missing")
    void coverage() {
        RainCoverage coverage = climate.coverage();
        assertThat(coverage.years()).isEqualTo(1);
        assertThat(coverage.rainMm()).isCloseTo(1114.55, within(5e-3));
        assertThat(coverage.meanWindMetresPerSecond()).isCloseTo(4.1761, within(5e-5));
        assertThat(coverage.wetHoursWithoutWind()).isEqualTo(23);
        assertThat(coverage.rainLeftOut()).isCloseTo(0.04, within(5e-3));
    }

    @Test
    @DisplayName(
            "ISO 15927-3 and ASHRAE 160 rank the bearings alike but for one, 115 degrees, nine places apart (non-regression)")
    void ranks() {
        DrivingRainRose rose = DrivingRainRose.of(climate, 5);
        assertThat(rose.spearman()).isBetween(0.99, 1.0);
        assertThat(rose.disagreements(9))
                .extracting(DrivingRainRose.Row::bearingDeg)
                .containsExactly(115.0);
    }
}
