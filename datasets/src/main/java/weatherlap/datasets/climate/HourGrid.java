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
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import weatherlap.datasets.table.Problems;
import weatherlap.sim.rain.HourlyWeather;

/**
 * Puts the readings of one or more files into one hour after another. Rows out of order are sorted; of two rows for an hour the first
 * counts, that of the earlier file; hours without a row are missing, but a calendar year without rows between others is an error. A lone
 * hour missing in spring and one twice in autumn of the same year are taken for daylight saving, and said to be.
 */
final class HourGrid {
    private static final int FIRST_YEAR = 1700;
    private static final int LAST_YEAR = 2200;
    private static final int MOST_HOURS = 200 * 8766;
    private static final double LEAST_FILLED = 0.1;
    private static final double HOURS_PER_YEAR = 8766;
    private static final double NEARLY = 15 * 24 / HOURS_PER_YEAR;
    private static final double MUCH_MISSING = 0.05;
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm", Locale.ROOT);

    /** A calendar year that holds less is no year of the record, but the edge of one. */
    private static final int DAY_HOURS = 24;

    private final String name;
    private final List<WeatherFile> files;
    private final Faults faults;
    private final List<LocalDateTime> repeated = new ArrayList<>();
    private final Set<LocalDateTime> without = new TreeSet<>();
    private final SortedMap<Integer, Integer> hoursOfYear = new TreeMap<>();
    private final List<String> treatment = new ArrayList<>();

    private HourGrid(String name, List<WeatherFile> files, Problems problems) {
        this.name = name;
        this.files = files;
        this.faults = new Faults(name, problems);
    }

    /**
     * Empty where nothing can be made of the readings, which is reported.
     *
     * @param files of one format, at least one
     */
    static Optional<Climate> of(List<WeatherFile> files, Problems problems) {
        List<WeatherFile> empty =
                files.stream().filter(file -> file.readings().isEmpty()).toList();
        empty.forEach(file -> file.faults().error("holds no hour of weather"));
        if (!empty.isEmpty()) {
            return Optional.empty();
        }
        List<WeatherFile> inOrder =
                files.stream().sorted(Comparator.comparing(WeatherFile::first)).toList();
        String first = inOrder.get(0).faults().file();
        String last = inOrder.get(inOrder.size() - 1).faults().file();
        String name = files.size() == 1 ? first : first + " to " + last + " (" + files.size() + " files)";
        return new HourGrid(name, inOrder, problems).climate();
    }

    private Optional<Climate> climate() {
        int outOfOrder = files.stream().mapToInt(WeatherFile::outOfOrder).sum();
        List<Reading> sorted = files.stream()
                .flatMap(file -> file.readings().stream())
                .sorted(Comparator.comparing(Reading::time))
                .toList();
        LocalDateTime start = hour(sorted.get(0));
        LocalDateTime end = hour(sorted.get(sorted.size() - 1));
        long hours = 1 + ChronoUnit.HOURS.between(start, end);
        if (hours > MOST_HOURS || sorted.size() < LEAST_FILLED * hours) {
            faults.error(sorted.size() + " rows spread over " + hours + " hours, from " + HOUR.format(start) + " (row "
                    + sorted.get(0).row() + ") to " + HOUR.format(end) + " (row "
                    + sorted.get(sorted.size() - 1).row() + "): is a date wrong?");
            return Optional.empty();
        }
        if (start.getYear() < FIRST_YEAR || end.getYear() > LAST_YEAR) {
            faults.error("holds hours of the years " + start.getYear() + " to " + end.getYear() + ": is a date wrong?");
            return Optional.empty();
        }
        HourlyWeather weather = fill(start, (int) hours);
        return yearsFollow() && check(weather)
                ? Optional.of(new Climate(
                        weather,
                        report(weather, outOfOrder),
                        files.stream()
                                .flatMap(file -> file.location().stream())
                                .distinct()
                                .toList()))
                : Optional.empty();
    }

    /** Whether every calendar year between others has rows; a year that lacks them is named. */
    private boolean yearsFollow() {
        List<String> missing = IntStream.range(hoursOfYear.firstKey() + 1, hoursOfYear.lastKey())
                .filter(year -> hoursOfYear.getOrDefault(year, 0) < DAY_HOURS)
                .mapToObj(Integer::toString)
                .toList();
        if (!missing.isEmpty()) {
            faults.error("has no hours of " + String.join(", ", missing)
                    + ": add what is missing, or leave out the years on one side of it");
        }
        return missing.isEmpty();
    }

    private static LocalDateTime hour(Reading reading) {
        return reading.time().truncatedTo(ChronoUnit.HOURS);
    }

    private HourlyWeather fill(LocalDateTime start, int hours) {
        double[][] columns = new double[4][hours];
        for (double[] column : columns) {
            Arrays.fill(column, Double.NaN);
        }
        boolean[] filled = new boolean[hours];
        for (WeatherFile file : files) {
            for (Reading reading : file.sorted()) {
                int t = (int) Duration.between(start, hour(reading)).toHours();
                if (filled[t]) {
                    repeated.add(hour(reading));
                    file.faults()
                            .warning(
                                    reading.row(),
                                    "time",
                                    "stands for the hour " + HOUR.format(hour(reading))
                                            + ", which an earlier row gave; left out");
                    continue;
                }
                filled[t] = true;
                hoursOfYear.merge(reading.time().getYear(), 1, Integer::sum);
                columns[0][t] = reading.windMetresPerSecond() == 0 ? Double.NaN : reading.windFromDeg();
                columns[1][t] = reading.windMetresPerSecond();
                columns[2][t] = reading.rainMm();
                columns[3][t] = reading.temperatureC();
            }
        }
        IntStream.range(0, hours).filter(t -> !filled[t]).forEach(t -> without.add(start.plusHours(t)));
        return new HourlyWeather(name, start, columns[0], columns[1], columns[2], columns[3]);
    }

    /** Whether it is of use; what is doubtful is warned of. */
    private boolean check(HourlyWeather weather) {
        long useful = IntStream.range(0, weather.hours())
                .filter(t -> !Double.isNaN(weather.rainMm()[t]) && !Double.isNaN(weather.windMetresPerSecond()[t]))
                .count();
        if (useful == 0) {
            faults.error("has no hour with both rain and wind, so driving rain cannot be worked out");
            return false;
        }
        if (Arrays.stream(weather.rainMm()).noneMatch(mm -> mm > 0)) {
            faults.warning("has no rain in any hour");
        }
        if (weather.hours() - useful > MUCH_MISSING * weather.hours()) {
            faults.warning("hours without rain or wind: " + (weather.hours() - useful) + " of " + weather.hours()
                    + "; nothing was added to make up for them");
        }
        double years = weather.hours() / HOURS_PER_YEAR;
        if (Math.abs(years - Math.rint(years)) > NEARLY * Math.max(1, Math.rint(years)) || years < 0.5) {
            faults.warning(String.format(
                    Locale.ROOT,
                    "covers %.2f years, so some seasons count more than others in yearly averages",
                    years));
        }
        return true;
    }

    private ClimateReport report(HourlyWeather weather, int outOfOrder) {
        int absurd =
                files.stream().mapToInt(file -> file.faults().absurdValues()).sum();
        explainTreatment(absurd);
        double[] speed = weather.windMetresPerSecond();
        double[] from = weather.windFromDeg();
        return new ClimateReport(
                name,
                files.get(0).format(),
                files.stream().mapToInt(file -> file.readings().size()).sum(),
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
                absurd,
                years(),
                treatment);
    }

    /** Calendar years with a day of hours or more; all where none has. */
    private List<Integer> years() {
        List<Integer> held = hoursOfYear.keySet().stream()
                .filter(year -> hoursOfYear.get(year) >= DAY_HOURS)
                .toList();
        return held.isEmpty() ? List.copyOf(hoursOfYear.keySet()) : held;
    }

    private void explainTreatment(int absurd) {
        treatment.add("Hours without rain or wind are left out, and nothing is added to make up for them.");
        treatment.add("Calm hours drive no rain.");
        if (!repeated.isEmpty()) {
            treatment.add("If an hour has several rows, the first one counts.");
        }
        if (absurd > 0) {
            treatment.add("Impossible readings count as missing.");
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
