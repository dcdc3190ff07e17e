package weatherlap.datasets.table;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Writes cells and lines of CSV as {@link CsvRows} reads them; lines end in a line feed. */
public final class CsvText {
    private CsvText() {}

    public static String line(List<String> cells) {
        return cells.stream().map(Quotes::around).collect(Collectors.joining(",", "", "\n"));
    }

    public static String line(String... cells) {
        return line(Arrays.asList(cells));
    }

    /** The shortest decimal that reads back as the same number; no decimals where it is whole. */
    public static String cell(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? Long.toString((long) value)
                : Double.toString(value);
    }

    public static String cell(OptionalDouble value) {
        return value.isPresent() ? cell(value.getAsDouble()) : "";
    }

    public static String cell(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
