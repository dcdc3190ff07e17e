package weatherlap.datasets.climate;

import java.time.LocalDateTime;
import java.util.List;

/**
 * What a weather file held and what was made of it.
 *
 * @param file name without its folder; of several files the first and the last
 * @param rows of readings in it
 * @param firstHour beginning of the first hour, in the file's own time
 * @param lastHour beginning of the last
 * @param hours from first to last, with those that are missing
 * @param hoursWithoutRow hours that no row speaks of
 * @param rainMissingHours hours without a reading of rain, those without a row among them
 * @param windMissingHours hours without a speed, or with a wind but no direction; those without a row among them
 * @param calmHours hours with a speed of zero
 * @param repeatedRows rows for an hour that had one already
 * @param rowsOutOfOrder rows earlier than the one before them
 * @param absurdValues readings that cannot be and were left out
 * @param calendarYears that hold a day of hours or more, in order; where none does, those that the hours touch
 * @param treatment what was done with all that, in sentences
 */
public record ClimateReport(
        String file,
        ClimateFormat format,
        int rows,
        LocalDateTime firstHour,
        LocalDateTime lastHour,
        int hours,
        int hoursWithoutRow,
        int rainMissingHours,
        int windMissingHours,
        int calmHours,
        int repeatedRows,
        int rowsOutOfOrder,
        int absurdValues,
        List<Integer> calendarYears,
        List<String> treatment) {
    public ClimateReport {
        calendarYears = List.copyOf(calendarYears);
        treatment = List.copyOf(treatment);
    }

    /** The calendar years in words, such as 2013 or 2014 to 2023. */
    public String years() {
        int first = calendarYears.get(0);
        int last = calendarYears.get(calendarYears.size() - 1);
        return first == last ? Integer.toString(first) : first + " to " + last;
    }
}
