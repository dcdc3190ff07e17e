package weatherlap.datasets.climate;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** The weather files that can be read, told apart by their first line. */
public enum ClimateFormat {
    /** Our own table: {@link ClimateCsv}. */
    HOURLY_CSV("hourly table"),
    /** EnergyPlus weather. */
    EPW("EnergyPlus weather (EPW)"),
    /** NOAA's Integrated Surface Database, reduced: fixed width. */
    ISD_LITE("NOAA ISD-Lite"),
    /** NOAA's Integrated Surface Database as CSV. */
    GLOBAL_HOURLY("NOAA global-hourly CSV");

    private static final Pattern ISD_LITE_LINE = Pattern.compile("\\d{4} \\d{2} \\d{2} \\d{2}( +-?\\d+){8}\\s*");

    private final String label;

    ClimateFormat(String label) {
        this.label = label;
    }

    /** What people call it. */
    public String label() {
        return label;
    }

    /** Whether its times are UTC; else they are local standard time. */
    public boolean isUtc() {
        return switch (this) {
            case ISD_LITE, GLOBAL_HOURLY -> true;
            case HOURLY_CSV, EPW -> false;
        };
    }

    /** By the first line that is not blank. */
    static Optional<ClimateFormat> of(String firstLine) {
        List<String> cells = Arrays.stream(firstLine.split(",", -1))
                .map(cell -> cell.replace("\"", "").strip())
                .toList();
        if (cells.get(0).equals("LOCATION")) {
            return Optional.of(EPW);
        }
        if (cells.contains("STATION") && cells.contains("DATE")) {
            return Optional.of(GLOBAL_HOURLY);
        }
        if (cells.contains(ClimateCsv.TIME) || cells.contains(ClimateCsv.RAIN)) {
            return Optional.of(HOURLY_CSV);
        }
        return ISD_LITE_LINE.matcher(firstLine).matches() ? Optional.of(ISD_LITE) : Optional.empty();
    }
}
