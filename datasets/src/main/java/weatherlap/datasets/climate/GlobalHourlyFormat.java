package weatherlap.datasets.climate;

import com.univocity.parsers.common.TextParsingException;
import com.univocity.parsers.csv.CsvParser;
import com.univocity.parsers.csv.CsvParserSettings;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import weatherlap.datasets.table.Quoted;

/**
 * Reads NOAA global-hourly CSV, UTC, cells in cells: {@code WND} direction, quality, type, speed (tenths of m/s), quality; {@code TMP}
 * tenths of °C, quality; {@code AA1} to {@code AA4} hours, rain (tenths of mm), condition, quality. 999 and 9999 are missing; type C is
 * calm; quality 3 and 7 is erroneous and left out. Rain of periods other than one hour is not used. A report stands for the hour that ends
 * with it; of several in an hour the greatest rain counts, and the last wind and temperature.
 *
 * @see "NOAA National Centers for Environmental Information, Integrated Surface Database, federal climate complex data documentation"
 */
final class GlobalHourlyFormat {
    private static final List<String> RAIN_COLUMNS = List.of("AA1", "AA2", "AA3", "AA4");
    private static final double PER_UNIT = 10;
    private static final int LONGEST_CELL = 20_000;

    private final Faults faults;
    private final List<String> header;
    private final List<Reading> hours = new ArrayList<>();
    private int merged;

    private GlobalHourlyFormat(Faults faults, List<String> header) {
        this.faults = faults;
        this.header = header;
    }

    static List<Reading> read(List<String> lines, Faults faults) {
        CsvParser parser = parser();
        GlobalHourlyFormat format = null;
        try {
            for (int i = 0; i < lines.size(); i++) {
                if (lines.get(i).isBlank()) {
                    continue;
                }
                String[] cells = parser.parseLine(lines.get(i));
                if (format == null) {
                    format = new GlobalHourlyFormat(faults, Arrays.asList(cells));
                    format.checkHeader(i + 1);
                } else {
                    format.add(i + 1, cells);
                }
            }
        } catch (TextParsingException e) {
            faults.error("has a cell of more than " + LONGEST_CELL + " characters (a quote that is never closed?)");
        }
        if (format == null) {
            return List.of();
        }
        if (format.merged > 0) {
            faults.warning(format.merged + " reports came in an hour that already had one; the most rain and the last"
                    + " wind count");
        }
        return format.hours;
    }

    /** Where the first row says that it was measured. */
    static Optional<Location> location(String headerLine, String firstLine) {
        CsvParser parser = parser();
        List<String> header = Arrays.asList(parser.parseLine(headerLine));
        List<String> first = Arrays.asList(parser.parseLine(firstLine));
        return Location.of(first, header.indexOf("LATITUDE"), header.indexOf("LONGITUDE"));
    }

    private static CsvParser parser() {
        CsvParserSettings settings = new CsvParserSettings();
        settings.setMaxCharsPerColumn(LONGEST_CELL);
        settings.setNullValue("");
        settings.setSkipEmptyLines(false);
        settings.setCommentProcessingEnabled(false);
        return new CsvParser(settings);
    }

    private void checkHeader(int row) {
        for (String column : List.of("DATE", "WND", "AA1")) {
            if (!header.contains(column)) {
                faults.error(row, column, "the column is missing");
            }
        }
    }

    private void add(int row, String[] cells) {
        LocalDateTime time;
        try {
            time = LocalDateTime.parse(cell(cells, "DATE"));
        } catch (DateTimeException e) {
            faults.error(
                    row, "DATE", Quoted.of(cell(cells, "DATE")) + " is not a time (expected: 2013-03-10T03:51:00)");
            return;
        }
        String[] wind = parts(row, cells, "WND", 5);
        double speed = good(wind[4]) ? value(row, "WND", wind[3], 9999) / PER_UNIT : Double.NaN;
        boolean calm = wind[2].equals("C");
        double from = calm || speed == 0 || !good(wind[1]) ? Double.NaN : value(row, "WND", wind[0], 999);
        String[] temperature = parts(row, cells, "TMP", 2);
        Reading reading = new Reading(
                row,
                time.minusMinutes(1).withMinute(0).withSecond(0).withNano(0),
                faults.bearing(row, "WND", from),
                faults.wind(row, "WND", calm ? 0 : speed),
                faults.rain(row, "AA1", rainMm(row, cells)),
                faults.temperature(
                        row,
                        "TMP",
                        good(temperature[1]) ? value(row, "TMP", temperature[0], 9999) / PER_UNIT : Double.NaN));
        int last = hours.size() - 1;
        if (last >= 0 && hours.get(last).time().equals(reading.time())) {
            hours.set(last, merge(hours.get(last), reading));
            merged++;
        } else {
            hours.add(reading);
        }
    }

    /** The greatest rain of one hour that a report gives; NaN where it gives none. */
    private double rainMm(int row, String[] cells) {
        double most = Double.NaN;
        for (String column : RAIN_COLUMNS) {
            String[] rain = parts(row, cells, column, 4);
            if (rain[0].equals("01") && good(rain[3])) {
                most = most(most, value(row, column, rain[1], 9999) / PER_UNIT);
            }
        }
        return most;
    }

    private static Reading merge(Reading earlier, Reading later) {
        boolean blows = !Double.isNaN(later.windMetresPerSecond());
        return new Reading(
                earlier.row(),
                earlier.time(),
                blows ? later.windFromDeg() : earlier.windFromDeg(),
                blows ? later.windMetresPerSecond() : earlier.windMetresPerSecond(),
                most(earlier.rainMm(), later.rainMm()),
                Double.isNaN(later.temperatureC()) ? earlier.temperatureC() : later.temperatureC());
    }

    private static double most(double a, double b) {
        return Double.isNaN(a) ? b : Double.isNaN(b) ? a : Math.max(a, b);
    }

    private String cell(String[] cells, String column) {
        int place = header.indexOf(column);
        return place < 0 || place >= cells.length || cells[place] == null ? "" : cells[place];
    }

    /** The parts of a cell; empty ones where the cell is empty, or, with an error, where it has too few. */
    private String[] parts(int row, String[] cells, String column, int expected) {
        String cell = cell(cells, column);
        String[] parts = cell.split(",", -1);
        if (parts.length < expected) {
            if (!cell.isEmpty()) {
                faults.error(row, column, Quoted.of(cell) + " has not " + expected + " parts");
            }
            parts = new String[expected];
            Arrays.fill(parts, "");
        }
        return parts;
    }

    private static boolean good(String quality) {
        return !quality.isEmpty() && !quality.equals("3") && !quality.equals("7");
    }

    private double value(int row, String column, String text, double missing) {
        if (text.isEmpty()) {
            return Double.NaN;
        }
        double value = faults.number(row, column, text);
        return Math.abs(value) == missing ? Double.NaN : value;
    }
}
