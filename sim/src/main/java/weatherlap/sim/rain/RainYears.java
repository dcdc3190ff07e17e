package weatherlap.sim.rain;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * The years that a climate is cut into: from its first hour, a year at a time. A year that is complete but for fifteen days counts as
 * whole, so that a file of 8,760 hours is one year and a few hours missing at the end do not matter. What is left over is used for
 * annual means, in proportion, but not for what is said of single years.
 */
final class RainYears {
    private static final double HOURS_PER_YEAR = 8766;
    private static final int TOLERATED_HOURS = 15 * 24;

    private final int[] ends;
    private final double years;

    private RainYears(int[] ends, double years) {
        this.ends = ends;
        this.years = years;
    }

    static RainYears of(HourlyWeather weather) {
        int hours = weather.hours();
        List<Integer> ends = new ArrayList<>();
        int end = yearEnd(weather, 1);
        while (end <= hours + TOLERATED_HOURS) {
            ends.add(Math.min(end, hours));
            end = yearEnd(weather, ends.size() + 1);
        }
        int whole = ends.size();
        int rest = hours - (whole == 0 ? 0 : ends.get(whole - 1));
        if (whole == 0) {
            return new RainYears(new int[] {hours}, hours / HOURS_PER_YEAR);
        }
        if (rest <= TOLERATED_HOURS) {
            ends.set(whole - 1, hours);
            return new RainYears(array(ends), whole);
        }
        return new RainYears(array(ends), whole + rest / HOURS_PER_YEAR);
    }

    private static int yearEnd(HourlyWeather weather, int years) {
        return (int) Duration.between(weather.start(), weather.start().plusYears(years))
                .toHours();
    }

    private static int[] array(List<Integer> ends) {
        return ends.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Length of the climate in years, for annual means. */
    double years() {
        return years;
    }

    /** Whole years in it; 1 where there is less than one. */
    int count() {
        return ends.length;
    }

    /** Index of the year that an hour falls in; {@link #count()} for what is left over at the end. */
    int yearOf(int hour) {
        int year = 0;
        while (year < ends.length && hour >= ends[year]) {
            year++;
        }
        return year;
    }
}
