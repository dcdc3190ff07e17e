package weatherlap.sim.rain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import weatherlap.sim.assumptions.Joint;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.Terrain;

class RainClimateTest {
    private static final Scenario SCENARIO = RainFixtures.scenario();

    @Test
    void steadyWeatherGivesTheHandComputedYear() {
        // 1.0 L/m² an hour: 4.5 m/s and 1 mm, square on.
        RainClimate climate = RainClimate.of(RainFixtures.steady(8760, 0, 4.5, 1), SCENARIO);
        assertThat(climate.wall(0).isoLitresPerM2Year()).isCloseTo(8760, within(1e-6));
        assertThat(climate.wall(60).isoLitresPerM2Year()).isCloseTo(4380, within(1e-6));
        assertThat(climate.wall(90).wetHours()).isZero();
        assertThat(climate.wall(180).isoLitresPerM2Year()).isZero();
        assertThat(climate.isoLitresPerM2Year(60)).isEqualTo(climate.wall(60).isoLitresPerM2Year());
        assertThat(climate.isoLitresPerM2Year(-30)).isEqualTo(climate.wall(330).isoLitresPerM2Year());
        RainClimate anyBearing =
                RainClimate.of(RainFixtures.steady(8760, 0, 4.5, 1).ofAnyBearing(), SCENARIO);
        assertThat(anyBearing.isoLitresPerM2Year(60))
                .isEqualTo(anyBearing.wall(180).isoLitresPerM2Year())
                .isPositive();
    }

    @Test
    void aDryClimateIsNoFault() {
        WallRain wall =
                RainClimate.of(RainFixtures.steady(8760, 0, 4.5, 0), SCENARIO).wall(0);
        assertThat(wall.isoLitresPerM2Year()).isZero();
        assertThat(wall.designSpellLitresPerM2()).isZero();
        assertThat(wall.share(2, 0.3, 1)).isZero();
    }

    @Test
    void anEmptyClimateIsRefused() {
        HourlyWeather empty = RainFixtures.steady(0, 0, 1, 1);
        assertThatThrownBy(() -> RainClimate.of(empty, SCENARIO)).hasMessageContaining("hours of the climate");
    }

    @Test
    void aSpellEndsAfter96DryHours() {
        assertThat(worstSpell(95)).isCloseTo(2, within(1e-12));
        assertThat(worstSpell(96)).isCloseTo(1, within(1e-12));
    }

    private static double worstSpell(int dryHours) {
        HourlyWeather weather = RainFixtures.steady(8760, 0, 4.5, 0);
        weather.rainMm()[100] = 1;
        weather.rainMm()[100 + dryHours + 1] = 1;
        return RainClimate.of(weather, SCENARIO).wall(0).worstSpellLitresPerM2();
    }

    @Test
    void theDesignSpellIsAQuantileOfTheWorstOfTheYears() {
        // Eight years whose worst hours are 1 to 8 L/m²: rank 0.67 · 9 = 6.03.
        HourlyWeather weather = RainFixtures.steady(8 * 8766, 0, 0, 1);
        for (int year = 0; year < 8; year++) {
            weather.windMetresPerSecond()[year * 8766 + 4000] = 4.5 * (8 - year);
        }
        assertThat(RainClimate.of(weather, SCENARIO).wall(0).designSpellLitresPerM2())
                .isCloseTo(6.03, within(1e-9));
        assertThat(RainClimate.of(weather, SCENARIO.with(Scalar.SPELL_QUANTILE, 0.5))
                        .wall(0)
                        .designSpellLitresPerM2())
                .isCloseTo(4.5, within(1e-9));
    }

    @Test
    void theSpreadOfYearsIsMeasuredFromThreeYearsOn() {
        HourlyWeather three = RainFixtures.steady(3 * 8766, 0, 0, 1);
        for (int year = 0; year < 3; year++) {
            three.windMetresPerSecond()[year * 8766 + 4000] = 1 + year;
        }
        // 1, 2, 3: mean 2, standard deviation 1.
        assertThat(RainClimate.of(three, SCENARIO).wall(0).yearSpread()).isCloseTo(0.5, within(1e-9));
        assertThat(RainClimate.of(RainFixtures.random(1, 2), SCENARIO).wall(0).yearSpread())
                .isEqualTo(SCENARIO.value(Scalar.YEAR_SPREAD));
    }

    @Test
    void missingHoursAreLeftOutAndCounted() {
        HourlyWeather weather = RainFixtures.steady(8760, 0, 4.5, 1);
        weather.windFromDeg()[0] = Double.NaN;
        weather.windMetresPerSecond()[1] = Double.NaN;
        weather.rainMm()[2] = Double.NaN;
        weather.windMetresPerSecond()[3] = 0;
        weather.windFromDeg()[3] = Double.NaN;
        RainClimate climate = RainClimate.of(weather, SCENARIO);
        assertThat(climate.wall(0).isoLitresPerM2Year()).isCloseTo(8756, within(1e-6));
        RainCoverage coverage = climate.coverage();
        assertThat(coverage.wetHoursWithoutWind()).isEqualTo(2);
        assertThat(coverage.rainMissingHours()).isEqualTo(1);
        assertThat(coverage.calmHours()).isEqualTo(1);
        assertThat(coverage.rainLeftOut()).isCloseTo(2.0 / 8759, within(1e-12));
    }

    @Test
    void yearsCountFromTheFirstHour() {
        assertThat(years(8760)).isEqualTo(1);
        assertThat(years(8760 - 14 * 24)).isEqualTo(1);
        assertThat(years(10 * 8766)).isEqualTo(10);
        assertThat(years(8760 + 4383)).isCloseTo(1.5, within(1e-9));
        assertThat(years(2000)).isCloseTo(2000 / 8766.0, within(1e-12));
    }

    private static double years(int hours) {
        return RainClimate.of(RainFixtures.steady(hours, 0, 1, 1), SCENARIO)
                .coverage()
                .years();
    }

    @Test
    void wholeDegreesMoveTheIndexByLessThanOnePercentOfTheWettestWall() {
        // The hardest rose: all wind from one side.
        HourlyWeather weather = RainFixtures.steady(8760, 0, 5, 1);
        RainClimate climate = RainClimate.of(weather, SCENARIO);
        double wettest = climate.wall(0).isoLitresPerM2Year();
        for (double bearing = 0.5; bearing < 90; bearing += 1) {
            double exact = new BruteForce(weather).litres(bearing, tangent -> 1);
            assertThat(climate.wall(bearing).isoLitresPerM2Year()).isCloseTo(exact, within(wettest * 0.01));
        }
        assertThat(climate.wall(359.7).facing()).isEqualTo("facing 0°");
    }

    /** Against sums over the hours, apart from the code: the mean of 24 walls, near the integral over all, index of one square on over π. */
    @Test
    void rainOfUnknownWindsIsTheMeanOfAllBearingsOnEveryWall() {
        HourlyWeather weather = RainFixtures.random(6, 1);
        RainClimate any = RainClimate.of(weather.ofAnyBearing(), SCENARIO);
        BruteForce sums = new BruteForce(weather);
        double mean = IntStream.range(0, 24)
                .mapToDouble(i -> sums.litres(15 * i, tangent -> 1))
                .average()
                .orElseThrow();
        assertThat(any.wall(77).isoLitresPerM2Year()).isCloseTo(mean, within(mean * 1e-9));
        assertThat(any.wall(254).isoLitresPerM2Year()).isEqualTo(any.wall(77).isoLitresPerM2Year());
        double squareOn = IntStream.range(0, weather.hours())
                .mapToDouble(t -> Iso15927.hourlyLitresPerM2(weather.windMetresPerSecond()[t], weather.rainMm()[t], 1))
                .sum();
        assertThat(mean).isCloseTo(squareOn / Math.PI, withinPercentage(0.6));
        double share = IntStream.range(0, 24)
                        .mapToDouble(i -> sums.litres(15 * i, tangent -> 0.4 / (tangent * 0.7) < 1.5 ? 1 : 0))
                        .sum()
                / 24
                / mean;
        assertThat(any.wall(0).share(1.5, 0.4, 0.7)).isCloseTo(share, within(1e-9));
    }

    @Test
    void threadsDoNotChangeAWall() {
        HourlyWeather weather = RainFixtures.random(4, 1);
        RainClimate one = RainClimate.of(weather, SCENARIO);
        RainClimate many = RainClimate.of(weather, SCENARIO);
        double[] inTurn = IntStream.range(0, 360)
                .mapToDouble(b -> one.wall(b).share(1, 0.4, 1) + one.wall(b).isoLitresPerM2Year())
                .toArray();
        double[] atOnce = IntStream.range(0, 3600)
                .parallel()
                .map(i -> (i * 7) % 360)
                .mapToDouble(b -> many.wall(b).share(1, 0.4, 1) + many.wall(b).isoLitresPerM2Year())
                .toArray();
        for (int i = 0; i < atOnce.length; i++) {
            assertThat(atOnce[i]).isEqualTo(inTurn[(i * 7) % 360]);
        }
    }

    @Test
    void theRoseTellsWhereTheStandardsDisagree() {
        // Much drizzle from the north, few downpours from the south: ASHRAE 160 weighs the downpours more.
        HourlyWeather weather = RainFixtures.steady(8760, 0, 5, 0);
        Arrays.fill(weather.rainMm(), 0, 1000, 0.5);
        Arrays.fill(weather.rainMm(), 5000, 5040, 15);
        Arrays.fill(weather.windFromDeg(), 5000, 5040, 180);
        DrivingRainRose rose = DrivingRainRose.of(RainClimate.of(weather, SCENARIO), 5);
        assertThat(rose.rows()).hasSize(72);
        assertThat(rose.rows().get(0).isoRank()).isEqualTo(1);
        assertThat(rose.rows().get(36).ashraeRank()).isEqualTo(1);
        assertThat(rose.rows().get(36).rankGap()).isNegative();
        assertThat(rose.spearman()).isLessThan(1);
        List<DrivingRainRose.Row> apart = rose.disagreements(10);
        assertThat(apart).isNotEmpty().allMatch(row -> Math.abs(row.rankGap()) >= 10);
    }

    @Test
    void anOpeningExplainsItsWaterDownToTheScenario() {
        RainClimate climate = RainClimate.of(RainFixtures.random(5, 1), SCENARIO);
        var window = RainFixtures.opening(3);
        var wall = RainFixtures.elevation(200, 18, 12, window);
        OpeningRain rain =
                OpeningRain.of(climate, RainFixtures.house(2, Terrain.SUBURBAN, wall), wall, window, SCENARIO);
        OpeningExposure exposure = rain.exposure();
        for (Joint joint : Joint.values()) {
            assertThat(exposure.litresPerYear(joint))
                    .isPositive()
                    .isEqualTo(rain.explain(joint).value());
        }
        assertThat(leaves(rain.explain(Joint.HEAD)))
                .extracting(Amount::name)
                .contains("wall_factor_bare", "runoff_height_ft", "runoff_fraction");
        // The sill by hand: rain with the eave times 36 × 60 in.
        assertThat(exposure.litresPerYear(Joint.SILL))
                .isCloseTo(exposure.litresPerM2Year() * 0.9144 * 1.524, within(1e-9));
        assertThat(rain.headShare()).isLessThan(rain.middleShare());
        assertThat(rain.middleShare()).isLessThan(rain.sillShare());
    }

    private static List<Amount> leaves(Amount amount) {
        return amount.parts().isEmpty()
                ? List.of(amount)
                : amount.parts().stream().flatMap(part -> leaves(part).stream()).toList();
    }
}
