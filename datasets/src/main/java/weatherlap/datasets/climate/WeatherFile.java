package weatherlap.datasets.climate;

import java.io.IOException;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import weatherlap.datasets.table.Source;

/**
 * One file of a weather record, read but not yet put in order.
 *
 * @param faults what is wrong in it
 * @param location where it says that it was measured: the first line of EPW, the columns of global-hourly; the others do not say
 */
record WeatherFile(ClimateFormat format, Faults faults, List<Reading> readings, Optional<Location> location) {
    /** @param source unpacked, its format known */
    static WeatherFile read(Source source, ClimateFormat format, Faults faults) throws IOException {
        if (format == ClimateFormat.HOURLY_CSV) {
            return new WeatherFile(format, faults, HourlyCsvFormat.read(source, faults), Optional.empty());
        }
        List<String> lines = TextLines.all(source);
        List<Reading> readings =
                switch (format) {
                    case EPW -> EpwFormat.read(lines, faults);
                    case ISD_LITE -> IsdLiteFormat.read(lines, faults);
                    case GLOBAL_HOURLY -> GlobalHourlyFormat.read(lines, faults);
                    case HOURLY_CSV -> throw new IllegalStateException("read above");
                };
        boolean sound = !faults.problems().hasErrors();
        return new WeatherFile(format, faults, readings, sound ? location(lines, format) : Optional.empty());
    }

    private static Optional<Location> location(List<String> lines, ClimateFormat format) {
        List<String> first =
                lines.stream().filter(line -> !line.isBlank()).limit(2).toList();
        return switch (format) {
            case EPW -> EpwFormat.location(first.get(0));
            case GLOBAL_HOURLY ->
                first.size() < 2 ? Optional.empty() : GlobalHourlyFormat.location(first.get(0), first.get(1));
            case HOURLY_CSV, ISD_LITE -> Optional.empty();
        };
    }

    /** Its readings in order of time; those that stood out of order are told. */
    List<Reading> sorted() {
        return readings.stream().sorted(Comparator.comparing(Reading::time)).toList();
    }

    /** Rows earlier than the one before them, each told. */
    int outOfOrder() {
        int count = 0;
        for (int i = 1; i < readings.size(); i++) {
            if (readings.get(i).time().isBefore(readings.get(i - 1).time())) {
                count++;
                faults.warning(
                        readings.get(i).row(),
                        "time",
                        "is earlier than the row before it; the program put it in" + " order");
            }
        }
        return count;
    }

    LocalDateTime first() {
        return readings.stream()
                .map(Reading::time)
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }
}
