package weatherlap.datasets.climate;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.Month;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import weatherlap.sim.rain.HourlyWeather;

/**
 * Puts readings into one hour after another. Rows out of order are sorted; of two rows for an hour the first counts; hours without a row
 * are missing. A lone hour missing in spring and one twice in autumn of the same year are taken for daylight saving, and said to be.
 */
final class HourGrid {
    private static final int MOST_HOURS = 200 * 8766;
    private static final double LEAST_FILLED = 0.1;
    private static final double HOURS_PER_YEAR = 8766;
    private static final double NEARLY = 15 * 24 / HOURS_PER_YEAR;
    private static final double MUCH_MISSING = 0.05;
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm", Locale.ROOT);

    private final String file;
    private final ClimateFormat format;
    private final Faults faults;
    private final List<Reading> readings;
    private final List<LocalDateTime> repeated = new ArrayList<>();
    private final Set<LocalDateTime> without = new TreeSet<>();
    private final List<String> treatment = new ArrayList<>();
    private int outOfOrder;

    private HourGrid(String file, ClimateFormat format, Faults faults, List<Reading> readings) {
        this.file = file;
        this.format = format;
        this.faults = faults;
        this.readings = readings;
    }

    /** Empty where nothing can be made of the readings, which is reported. */
    static Optional<Climate> of(String file, ClimateFormat format, Faults faults, List<Reading> readings) {
        return new HourGrid(file, format, faults, readings).climate();
    }

    private Optional<Climate> climate() {
        if (readings.isEmpty()) {
            faults.error("holds no hour of weather");
            return Optional.empty();
        }
        List<Reading> sorted = sorted();
        LocalDateTime start = hour(sorted.get(0));
        LocalDateTime end = hour(sorted.get(sorted.size() - 1));
        long hours = 1 + ChronoUnit.HOURS.between(start, end);
        if (hours > MOST_HOURS || readings.size() < LEAST_FILLED * hours) {
            faults.error(
                    readings.size() + " rows spread over " + hours + " hours, from " + HOUR.format(start) + " (row "
                            + sorted.get(0).row() + ") to " + HOUR.format(end) + " (row "
                            + sorted.get(sorted.size() - 1).row() + "): is a date wrong?");
            return Optional.empty();
        }
        HourlyWeather weather = fill(sorted, start, (int) hours);
        return check(weather) ? Optional.of(new Climate(weather, report(weather))) : Optional.empty();
    }

    private List<Reading> sorted() {
        for (int i = 1; i < readings.size(); i++) {
            if (readings.get(i).time().isBefore(readings.get(i - 1).time())) {
                outOfOrder++;
                faults.warning(readings.get(i).row(), "time", "is earlier than the row before it; sorted in");
            }
        }
        return readings.stream().sorted(Comparator.comparing(Reading::time)).toList();
    }

    private static LocalDateTime hour(Reading reading) {
        return reading.time().truncatedTo(ChronoUnit.HOURS);
    }

    private HourlyWeather fill(List<Reading> sorted, LocalDateTime start, int hours) {
        double[][] columns = new double[4][hours];
        for (double[] column : columns) {
            Arrays.fill(column, Double.NaN);
        }
        boolean[] filled = new boolean[hours];
        for (Reading reading : sorted) {
            int t = (int) Duration.between(start, hour(reading)).toHours();
            if (filled[t]) {
                repeated.add(hour(reading));
                faults.warning(
                        reading.row(),
                        "time",
                        "stands for the hour " + HOUR.format(hour(reading)) + ", which an earlier row gave; left out");
                continue;
            }
            filled[t] = true;
            columns[0][t] = reading.windMetresPerSecond() == 0 ? Double.NaN : reading.windFromDeg();
            columns[1][t] = reading.windMetresPerSecond();
            columns[2][t] = reading.rainMm();
            columns[3][t] = reading.temperatureC();
        }
        IntStream.range(0, hours).filter(t -> !filled[t]).forEach(t -> without.add(start.plusHours(t)));
        return new HourlyWeather(file, start, columns[0], columns[1], columns[2], columns[3]);
    }

    /** Whether it is of use; what is doubtful is warned of. */
    private boolean check(HourlyWeather weather) {
        long useful = IntStream.range(0, weather.hours())
                .filter(t -> !Double.isNaN(weather.rainMm()[t]) && !Double.isNaN(weather.windMetresPerSecond()[t]))
                .count();
        if (useful == 0) {
            faults.error("has no hour with both rain and wind: driving rain cannot be worked out");
            return false;
        }
        if (Arrays.stream(weather.rainMm()).noneMatch(mm -> mm > 0)) {
            faults.warning("has no rain in any hour");
        }
        if (weather.hours() - useful > MUCH_MISSING * weather.hours()) {
            faults.warning("hours without rain or wind: " + (weather.hours() - useful) + " of " + weather.hours()
                    + "; the sums are not scaled up for them");
        }
        double years = weather.hours() / HOURS_PER_YEAR;
        if (Math.abs(years - Math.rint(years)) > NEARLY * Math.max(1, Math.rint(years)) || years < 0.5) {
            faults.warning(String.format(
                    Locale.ROOT, "covers %.2f years: some seasons count more than others in annual means", years));
        }
        return true;
    }

    private ClimateReport report(HourlyWeather weather) {
        explainTreatment();
        double[] speed = weather.windMetresPerSecond();
        double[] from = weather.windFromDeg();
        return new ClimateReport(
                file,
                format,
                readings.size(),
                weather.start(),
                weather.start().plusHours(weather.hours() - 1L),
                weather.hours(),
                without.size(),
                (int) Arrays.stream(weather.rainMm()).filter(Double::isNaN).count(),
                (int) IntStream.range(0, speed.length)
                        .filter(t -> Double.isNaN(speed[t]) || (speed[t] > 0 && Double.isNaN(from[t])))
                        .count(),
                (int) Arrays.stream(speed).filter(v -> v == 0).count(),
                repeated.size(),
                outOfOrder,
                faults.absurdValues(),
                IntStream.rangeClosed(weather.year(0), weather.year(weather.hours() - 1))
                        .boxed()
                        .toList(),
                treatment);
    }

    private void explainTreatment() {
        treatment.add("Hours that lack rain, or a wind, are left out of the sums, which are not scaled up for them.");
        treatment.add("Calm hours drive no rain.");
        if (!repeated.isEmpty()) {
            treatment.add("Of several rows for one hour the first counts.");
        }
        if (faults.absurdValues() > 0) {
            treatment.add("Readings that cannot be are taken as missing.");
        }
        Set<Integer> yearsWithTwin = repeated.stream()
                .filter(hour -> isNight(hour) && autumn(hour))
                .map(LocalDateTime::getYear)
                .collect(Collectors.toSet());
        for (LocalDateTime gap : without) {
            boolean alone = !without.contains(gap.minusHours(1)) && !without.contains(gap.plusHours(1));
            if (isNight(gap) && spring(gap) && alone && yearsWithTwin.contains(gap.getYear())) {
                String said =
                        "The hour " + HOUR.format(gap) + " is missing and one of that autumn is there twice: the file"
                                + " keeps daylight-saving time. Hours between are one hour late, which moves no annual sum.";
                treatment.add(said);
                faults.warning(said);
            }
        }
    }

    private static boolean isNight(LocalDateTime hour) {
        return hour.getHour() <= 3;
    }

    private static boolean spring(LocalDateTime hour) {
        return hour.getMonth() == Month.MARCH || hour.getMonth() == Month.APRIL;
    }

    private static boolean autumn(LocalDateTime hour) {
        return hour.getMonthValue() >= Month.SEPTEMBER.getValue() && hour.getMonthValue() <= Month.NOVEMBER.getValue();
    }
}
