package weatherlap.datasets.climate;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import weatherlap.datasets.table.CsvRows;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Source;

/** Reads {@link ClimateCsv}. Times with an offset from UTC are all brought to the offset of the first. */
final class HourlyCsvFormat {
    /** Stands for any digits. */
    private static final String SHORT = "0000-00-00T00:00";

    private final Faults faults;
    private ZoneOffset offset;

    private HourlyCsvFormat(Faults faults) {
        this.faults = faults;
    }

    static List<Reading> read(Source source, Faults faults) {
        HourlyCsvFormat format = new HourlyCsvFormat(faults);
        List<Reading> readings = new ArrayList<>();
        CsvRows.open(source, ClimateCsv.schema(source.name()), faults.problems())
                .ifPresent(rows -> {
                    try (rows) {
                        rows.forEachRemaining(row -> format.add(row, readings));
                    }
                });
        return readings;
    }

    private void add(Row row, List<Reading> readings) {
        if (!row.isSound()) {
            return;
        }
        int line = row.line();
        try {
            LocalDateTime time = time(row.text(ClimateCsv.TIME));
            readings.add(new Reading(
                    line,
                    time,
                    faults.bearing(line, ClimateCsv.FROM, row.number(ClimateCsv.FROM, Double.NaN)),
                    faults.wind(line, ClimateCsv.SPEED, row.number(ClimateCsv.SPEED, Double.NaN)),
                    faults.rain(line, ClimateCsv.RAIN, row.number(ClimateCsv.RAIN, Double.NaN)),
                    faults.temperature(line, ClimateCsv.TEMPERATURE, row.number(ClimateCsv.TEMPERATURE, Double.NaN))));
        } catch (DateTimeException e) {
            faults.error(
                    line,
                    ClimateCsv.TIME,
                    Quoted.of(row.text(ClimateCsv.TIME)) + " is not a time (expected: ISO 8601, 2013-03-10T03:00)");
        }
    }

    private LocalDateTime time(String text) {
        String iso = text.replace(' ', 'T');
        boolean zoned = iso.endsWith("Z") || iso.lastIndexOf('+') > 0 || iso.lastIndexOf('-') > iso.indexOf('T');
        if (!zoned) {
            return isShort(iso)
                    ? LocalDateTime.of(
                            whole(iso, 0, 4),
                            whole(iso, 5, 7),
                            whole(iso, 8, 10),
                            whole(iso, 11, 13),
                            whole(iso, 14, 16))
                    : LocalDateTime.parse(iso);
        }
        OffsetDateTime time = OffsetDateTime.parse(iso);
        if (offset == null) {
            offset = time.getOffset();
        }
        return time.withOffsetSameInstant(offset).toLocalDateTime();
    }

    /** Whether a time is written to the minute, as the program itself does and most files do: such a one needs no formatter. */
    private static boolean isShort(String iso) {
        boolean fits = iso.length() == SHORT.length();
        for (int i = 0; fits && i < iso.length(); i++) {
            char c = iso.charAt(i);
            fits = SHORT.charAt(i) == '0' ? c >= '0' && c <= '9' : c == SHORT.charAt(i);
        }
        return fits;
    }

    private static int whole(String digits, int from, int to) {
        return Integer.parseInt(digits, from, to, 10);
    }
}
