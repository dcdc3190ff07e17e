package weatherlap.datasets.climate;

import java.util.Locale;
import java.util.regex.Pattern;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Quoted;

/**
 * What is wrong with the cells of one weather file. Text where a number must stand is an error; a number that cannot be is left out with
 * a warning, and counted.
 *
 * <p>Bounds: wind 0 to 60 m/s (no hourly mean near the ground is known over that; judgement), bearing 0 to 360°, rain 0 to 305 mm in an
 * hour (the greatest ever measured in less than an hour; from memory), temperature −90 to 60 °C (the extremes measured; from memory).
 */
final class Faults {
    /** As weather files write numbers; Java itself would read 5f and 0x1p3 too. */
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(\\d{1,12}\\.?\\d{0,12}|\\.\\d{1,12})([eE][+-]?\\d{1,2})?");

    private static final Pattern WHOLE = Pattern.compile("[+-]?\\d{1,9}");

    private static final double MOST_WIND_METRES_PER_SECOND = 60;
    private static final double MOST_RAIN_MM = 305;

    private final String file;
    private final Problems problems;
    private int absurd;

    Faults(String file, Problems problems) {
        this.file = file;
        this.problems = problems;
    }

    String file() {
        return file;
    }

    Problems problems() {
        return problems;
    }

    int absurdValues() {
        return absurd;
    }

    void error(int row, String column, String message) {
        problems.error(file, row, column, message);
    }

    void warning(int row, String column, String message) {
        problems.warning(file, row, column, message);
    }

    void error(String message) {
        problems.error(file, message);
    }

    void warning(String message) {
        problems.warning(file, 0, "", message);
    }

    /** A number, or NaN with an error where the text is none. */
    double number(int row, String column, String text) {
        if (NUMBER.matcher(text.strip()).matches()) {
            return Double.parseDouble(text.strip());
        }
        error(row, column, Quoted.of(text) + " is not a number");
        return Double.NaN;
    }

    /**
     * Digits with a sign before them or none.
     *
     * @throws NumberFormatException if the text is anything else
     */
    static int whole(String text) {
        if (!WHOLE.matcher(text.strip()).matches()) {
            throw new NumberFormatException(text);
        }
        return Integer.parseInt(text.strip());
    }

    double bearing(int row, String column, double degrees) {
        return within(row, column, degrees, 0, 360, "degrees");
    }

    double wind(int row, String column, double metresPerSecond) {
        return within(row, column, metresPerSecond, 0, MOST_WIND_METRES_PER_SECOND, "m/s");
    }

    double rain(int row, String column, double mm) {
        return within(row, column, mm, 0, MOST_RAIN_MM, "mm");
    }

    double temperature(int row, String column, double celsius) {
        return within(row, column, celsius, -90, 60, "°C");
    }

    private double within(int row, String column, double value, double low, double high, String unit) {
        if (value < low || value > high) {
            absurd++;
            warning(
                    row,
                    column,
                    String.format(
                            Locale.ROOT,
                            "%s %s is impossible (expected: %.0f to %.0f); left out",
                            value,
                            unit,
                            low,
                            high));
            return Double.NaN;
        }
        return value;
    }
}
