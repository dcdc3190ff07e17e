package weatherlap.datasets.jobs;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;
import weatherlap.datasets.table.Row;

/** A day as job records write it: year-month-day. */
final class DateCell {
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2200;

    private DateCell() {}

    /** The day; empty where the cell is, or where it holds none, which is reported. */
    static Optional<LocalDate> of(Row row, String column, Problems problems) {
        String text = row.text(column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            LocalDate date = LocalDate.parse(text);
            if (date.getYear() >= FIRST_YEAR && date.getYear() <= LAST_YEAR) {
                return Optional.of(date);
            }
            row.error(problems, column, Quoted.of(text) + " is not a year anyone worked in");
        } catch (DateTimeParseException e) {
            row.error(problems, column, Quoted.of(text) + " is not a date (year-month-day, such as 2024-05-31)");
        }
        return Optional.empty();
    }
}
