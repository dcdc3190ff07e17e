package weatherlap.sim.rain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.time.Month;
import java.util.Arrays;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;

class RainDaysTest {
    private static final Scenario SCENARIO = RainFixtures.scenario()
            .with(Scalar.WORK_START_HOUR, 8)
            .with(Scalar.HOURS_PER_DAY, 8)
            .with(Scalar.RAIN_DAY_MM, 2.5);

    /** A June: rain at a given hour of every third day, and as much at midnight of every day. */
    private static RainDays june(int hour, double mm) {
        double[] rain = new double[30 * 24];
        for (int day = 0; day < 30; day++) {
            rain[24 * day] = mm;
            rain[24 * day + hour] += day % 3 == 0 ? mm : 0;
        }
        return of(rain);
    }

    private static RainDays of(double[] rain) {
        double[] none = RainFixtures.filled(rain.length, Double.NaN);
        return RainDays.of(
                new HourlyWeather("june", LocalDateTime.of(2021, 6, 1, 0, 0), none, none, rain, none), SCENARIO);
    }

    /** By hand: a third of 30 days, of which five sevenths are worked, is 7.14. */
    @Test
    void onlyRainWithinTheWorkingHoursLosesTheDay() {
        assertThat(june(8, 2.5).lostDays(Month.JUNE)).isCloseTo(30 / 3.0 * 5 / 7, within(1e-9));
        assertThat(june(15, 2.5).lostDays(Month.JUNE)).isCloseTo(30 / 3.0 * 5 / 7, within(1e-9));
        assertThat(june(16, 2.5).lostDays(Month.JUNE)).isZero();
        assertThat(june(7, 2.5).lostDays(Month.JUNE)).isZero();
        assertThat(june(12, 2.4).lostDays(Month.JUNE)).isZero();
    }

    @Test
    void aDayOfWhichHalfIsNotKnownIsNotLookedAt() {
        double[] rain = new double[30 * 24];
        Arrays.fill(rain, 8, 12, Double.NaN);
        rain[24 + 8] = 9;
        assertThat(of(rain).lostShare().get(Month.JUNE)).isCloseTo(1 / 29.0, within(1e-12));
    }

    @Test
    void aJobTakesLongerInARainyMonth() {
        assertThat(june(12, 3).daysFor(4, Month.JUNE)).isCloseTo(6, within(1e-9));
        assertThat(june(12, 3).daysFor(4, Month.MAY)).isEqualTo(4);
        assertThat(june(12, 3).daysFor(4)).isCloseTo(6, within(1e-9)); // the one month on file stands for all
    }

    @Test
    @DisplayName("Newark 2013, Seattle 2014, 8 to 16 h, from 2.5 mm on: against a count made apart from this code")
    void airports() {
        RainDays newark = RainDays.of(Airports.hourly("newark"), SCENARIO);
        assertThat(newark.lostDaysPerYear()).isCloseTo(28.032, within(1e-3));
        assertThat(newark.lostDays(Month.JUNE)).isCloseTo(3.571, within(1e-3));
        RainDays seattle = RainDays.of(Airports.hourly("seattle"), SCENARIO);
        assertThat(seattle.lostDaysPerYear()).isCloseTo(32.335, within(1e-3));
        assertThat(seattle.lostDays(Month.JULY)).isCloseTo(0.000, within(1e-3));
    }
}
