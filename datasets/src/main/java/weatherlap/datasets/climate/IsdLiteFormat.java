package weatherlap.datasets.climate;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads NOAA ISD-Lite, fixed width, UTC: characters 1–4 year, 6–7 month, 9–10 day, 12–13 hour, 14–19 air temperature (tenths of °C), 32–37
 * wind direction (degrees), 38–43 wind speed (tenths of m/s), 50–55 rain in the hour (tenths of mm; −1 is a trace), 56–61 in six hours;
 * −9999 is missing. The hour given is the end of the hour the rain fell in. Totals of six hours are not spread over hours; they are counted.
 *
 * @see "NOAA National Centers for Environmental Information, ISD-Lite format description (public documentation)"
 */
final class IsdLiteFormat {
    private static final int LINE_LENGTH = 55;
    private static final double MISSING = -9999;
    private static final double TRACE = -1;
    private static final double PER_UNIT = 10;

    private final Faults faults;
    private int sixHourTotals;

    private IsdLiteFormat(Faults faults) {
        this.faults = faults;
    }

    static List<Reading> read(List<String> lines, Faults faults) {
        IsdLiteFormat format = new IsdLiteFormat(faults);
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isBlank()) {
                format.add(i + 1, lines.get(i), readings);
            }
        }
        if (format.sixHourTotals > 0) {
            faults.warning(format.sixHourTotals + " totals of six hours stand where the rain of the hour is missing;"
                    + " they were not spread over the hours");
        }
        return readings;
    }

    private void add(int row, String line, List<Reading> readings) {
        if (line.length() < LINE_LENGTH) {
            faults.error(row, "", "has " + line.length() + " characters (expected: at least " + LINE_LENGTH + ")");
            return;
        }
        try {
            LocalDateTime time =
                    LocalDateTime.of(whole(line, 0, 4), whole(line, 5, 7), whole(line, 8, 10), whole(line, 11, 13), 0);
            double from = value(row, "wind direction", line, 31);
            double speed = value(row, "wind speed", line, 37) / PER_UNIT;
            double rain = value(row, "rain in one hour", line, 49);
            double sixHours = line.length() < 61 ? Double.NaN : value(row, "rain in six hours", line, 55);
            if (Double.isNaN(rain) && sixHours > 0) {
                sixHourTotals++;
            }
            readings.add(new Reading(
                    row,
                    time.minusHours(1),
                    speed == 0 ? Double.NaN : faults.bearing(row, "wind direction", from),
                    faults.wind(row, "wind speed", speed),
                    faults.rain(row, "rain in one hour", rain == TRACE ? 0 : rain / PER_UNIT),
                    faults.temperature(row, "air temperature", value(row, "air temperature", line, 13) / PER_UNIT)));
        } catch (DateTimeException | NumberFormatException e) {
            faults.error(row, "year, month, day, hour", "\"" + line.substring(0, 13) + "\" is not an hour of a day");
        }
    }

    private static int whole(String line, int from, int to) {
        return Faults.whole(line.substring(from, to));
    }

    private double value(int row, String column, String line, int from) {
        double value = faults.number(row, column, line.substring(from, Math.min(from + 6, line.length())));
        return value == MISSING ? Double.NaN : value;
    }
}
