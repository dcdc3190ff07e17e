package weatherlap.sim.rain;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.Month;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import weatherlap.sim.Check;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;

/**
 * Working days that rain takes, by month. A day counts as lost where {@code rain_day_mm} or more fall within its working hours, which begin
 * at {@code work_start_hour} and last {@code hours_per_day}, in local standard time all year. Rain does not know the days of the week, so
 * every day on file is looked at, and five sevenths of the days of a month are working days. A day of which half the working hours or more
 * lack a reading of rain is not looked at. Snow counts by its water. The rule is common practice, no source; the threshold is judgement.
 *
 * @param lostShare share of the days of each month that are lost, 0 to 1; a month that is not on file is missing
 */
public record RainDays(Map<Month, Double> lostShare) {
    private static final double WORKING_SHARE = 5.0 / 7.0;
    private static final double DAYS_PER_YEAR = 365.25;
    private static final double DAYS_PER_FEBRUARY = 28.25;

    public RainDays {
        lostShare.forEach((month, share) -> Check.fraction("days lost in " + month, share));
        lostShare = Collections.unmodifiableMap(lostShare.isEmpty() ? Map.of() : new EnumMap<>(lostShare));
    }

    /** Looked at and lost, so far, of one month. */
    private static final class Tally {
        private int days;
        private int lost;
    }

    public static RainDays of(HourlyWeather weather, Scenario scenario) {
        int startHour = scenario.whole(Scalar.WORK_START_HOUR);
        int hours = (int) Math.ceil(scenario.value(Scalar.HOURS_PER_DAY));
        double losesMm = scenario.value(Scalar.RAIN_DAY_MM);
        Map<Month, Tally> tallies = new EnumMap<>(Month.class);
        LocalDate end = weather.start().plusHours(weather.hours()).toLocalDate();
        for (LocalDate day = weather.start().toLocalDate(); !day.isAfter(end); day = day.plusDays(1)) {
            double mm = rainMm(weather, day.atTime(startHour, 0), hours);
            if (!Double.isNaN(mm)) {
                Tally tally = tallies.computeIfAbsent(day.getMonth(), month -> new Tally());
                tally.days++;
                tally.lost += mm > 0 && mm >= losesMm ? 1 : 0;
            }
        }
        Map<Month, Double> shares = new EnumMap<>(Month.class);
        tallies.forEach((month, tally) -> shares.put(month, (double) tally.lost / tally.days));
        return new RainDays(shares);
    }

    /** Rain in some hours from a time on; NaN where half of them or more are not on file. */
    private static double rainMm(HourlyWeather weather, LocalDateTime from, int hours) {
        int first = (int) Duration.between(weather.start(), from).toHours();
        double sum = 0;
        int known = 0;
        for (int t = Math.max(0, first); t < Math.min(weather.hours(), first + hours); t++) {
            if (!Double.isNaN(weather.rainMm()[t])) {
                sum += weather.rainMm()[t];
                known++;
            }
        }
        return 2 * known > hours ? sum : Double.NaN;
    }

    /** Working days lost in a month on the mean of the years; 0 for a month that is not on file. */
    public double lostDays(Month month) {
        double days = month == Month.FEBRUARY ? DAYS_PER_FEBRUARY : month.maxLength();
        return lostShare.getOrDefault(month, 0.0) * days * WORKING_SHARE;
    }

    /** Working days lost in a year: of all months alike, where some are not on file. */
    public double lostDaysPerYear() {
        double mean = lostShare.values().stream().mapToDouble(s -> s).average().orElse(0);
        return lostShare.size() == Month.values().length
                ? lostShare.keySet().stream().mapToDouble(this::lostDays).sum()
                : mean * DAYS_PER_YEAR * WORKING_SHARE;
    }

    /**
     * Working days from the first to the last that a job of so many dry ones takes in a month, on the mean.
     *
     * @param dryDays 0 or more
     */
    public double daysFor(double dryDays, Month month) {
        return stretched(dryDays, lostShare.getOrDefault(month, 0.0));
    }

    /**
     * The same over the year.
     *
     * @param dryDays 0 or more
     */
    public double daysFor(double dryDays) {
        return stretched(dryDays, lostShareOfYear());
    }

    /** Share of the working days of a year that are lost, 0 to 1. */
    public double lostShareOfYear() {
        return lostDaysPerYear() / (DAYS_PER_YEAR * WORKING_SHARE);
    }

    private static double stretched(double dryDays, double lost) {
        return Check.notNegative("dry days", dryDays) / (1 - Math.min(lost, 0.99));
    }
}
