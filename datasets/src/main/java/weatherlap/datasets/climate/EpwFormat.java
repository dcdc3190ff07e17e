package weatherlap.datasets.climate;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads EnergyPlus weather: eight header lines, then one line an hour, of which are used (counted from 1) 1 year, 2 month, 3 day, 4 hour
 * (1 to 24, the one that ends then), 7 dry bulb °C (99.9 missing), 21 wind direction (999), 22 wind speed m/s (999), 34 liquid
 * precipitation mm (999). Months of a typical year come from years far apart; they are put
 * into one. A stretch of a year or so that crosses the turn of the year keeps its years.
 *
 * @see "EnergyPlus, Auxiliary Programs, section Weather Converter, data dictionary (public documentation)"
 */
final class EpwFormat {
    /** Hours of a day are numbered from 1. */
    private static final int HOURS = 24;

    private static final int HEADER_LINES = 8;
    private static final int LATITUDE_CELL = 6;
    private static final int LONGITUDE_CELL = 7;
    private static final int LEAST_CELLS = 34;
    private static final int TYPICAL_YEAR_HOURS = 8784;
    /** A year without and one with 29 February, to put a typical year into. */
    private static final int COMMON_YEAR = 2001;

    private static final int LEAP_YEAR = 2004;

    private final Faults faults;

    /** Where its first line says that it was measured. */
    static Optional<Location> location(String firstLine) {
        return Location.of(List.of(firstLine.split(",", -1)), LATITUDE_CELL, LONGITUDE_CELL);
    }

    private EpwFormat(Faults faults) {
        this.faults = faults;
    }

    static List<Reading> read(List<String> lines, Faults faults) {
        EpwFormat format = new EpwFormat(faults);
        List<String[]> cells = new ArrayList<>();
        List<Integer> rows = new ArrayList<>();
        for (int i = HEADER_LINES; i < lines.size(); i++) {
            if (lines.get(i).isBlank()) {
                continue;
            }
            String[] line = lines.get(i).split(",", -1);
            if (line.length < LEAST_CELLS) {
                faults.error(i + 1, "", "has " + line.length + " cells (expected: at least " + LEAST_CELLS + ")");
            } else {
                cells.add(line);
                rows.add(i + 1);
            }
        }
        int typicalYear = format.typicalYear(cells);
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            format.add(rows.get(i), cells.get(i), typicalYear, readings);
        }
        return readings;
    }

    /** The year to put all hours into, 0 where they keep their own. */
    private int typicalYear(List<String[]> cells) {
        Set<String> years = new HashSet<>();
        boolean leap = false;
        for (String[] line : cells) {
            years.add(line[0].strip());
            leap |= line[1].strip().equals("2") && line[2].strip().equals("29");
        }
        if (years.size() < 2 || cells.size() > TYPICAL_YEAR_HOURS || isOneStretch(cells)) {
            return 0;
        }
        faults.warning("is a typical year, put together from months of " + years.size()
                + " years; take what it says of wet spells, and of wet and dry years, with care");
        return leap ? LEAP_YEAR : COMMON_YEAR;
    }

    /** Whether the months lie within a year of each other, as those of a real year that does not begin in January. */
    private static boolean isOneStretch(List<String[]> cells) {
        try {
            IntSummaryStatistics months = cells.stream()
                    .mapToInt(line -> 12 * whole(line[0]) + whole(line[1]))
                    .summaryStatistics();
            return months.getMax() - months.getMin() <= 12;
        } catch (NumberFormatException e) {
            return false; // told with its row when that is read
        }
    }

    private void add(int row, String[] cells, int typicalYear, List<Reading> readings) {
        try {
            int year = typicalYear == 0 ? whole(cells[0]) : typicalYear;
            LocalDateTime day = LocalDateTime.of(year, whole(cells[1]), whole(cells[2]), 0, 0);
            int hour = whole(cells[3]);
            if (hour < 1 || hour > HOURS) {
                throw new DateTimeException("hour " + hour);
            }
            readings.add(new Reading(
                    row,
                    day.plusHours(hour - 1L),
                    faults.bearing(row, "wind direction", value(row, "wind direction", cells[20], 999)),
                    faults.wind(row, "wind speed", value(row, "wind speed", cells[21], 999)),
                    faults.rain(
                            row,
                            "liquid precipitation depth",
                            value(row, "liquid precipitation depth", cells[33], 999)),
                    faults.temperature(row, "dry bulb", value(row, "dry bulb", cells[6], 99.9))));
        } catch (DateTimeException | NumberFormatException e) {
            String when = String.join("-", cells[0], cells[1], cells[2]) + " hour " + cells[3];
            faults.error(row, "year, month, day, hour", when + " is not an hour of a day");
        }
    }

    private static int whole(String cell) {
        return Faults.whole(cell);
    }

    /** NaN where the cell is empty or holds the mark of a missing value. */
    private double value(int row, String column, String cell, double missing) {
        if (cell.isBlank()) {
            return Double.NaN;
        }
        double value = faults.number(row, column, cell);
        return value >= missing ? Double.NaN : value;
    }
}
