package weatherlap.datasets.table;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * Writes cells and lines of CSV as {@link CsvRows} reads them; lines end in a line feed.
 *
 * @see "RFC 4180, section 2, rules 5 to 7"
 */
public final class CsvText {
    private CsvText() {}

    public static String line(List<String> cells) {
        return cells.stream().map(CsvText::around).collect(Collectors.joining(",", "", "\n"));
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

    /** What stands in a cell as the file writes it; empty where its quotes do not pair. */
    static Optional<String> content(String raw) {
        if (raw.indexOf('"') < 0) {
            return Optional.of(raw);
        }
        String cell = raw.strip();
        boolean enclosed = cell.length() >= 2 && cell.startsWith("\"") && cell.endsWith("\"");
        if (!enclosed) {
            return Optional.empty();
        }
        String doubled = cell.substring(1, cell.length() - 1);
        String content = doubled.replace("\"\"", "\"");
        long marks = doubled.chars().filter(c -> c == '"').count();
        long single = content.chars().filter(c -> c == '"').count();
        return marks == 2 * single ? Optional.of(content) : Optional.empty();
    }

    /** The cell as a file writes it: in quotes where it holds a comma, a quote, a line break or blanks at an end. */
    static String around(String content) {
        boolean plain = content.indexOf(',') < 0
                && content.indexOf('"') < 0
                && content.indexOf('\n') < 0
                && content.indexOf('\r') < 0
                && content.strip().length() == content.length();
        return plain ? content : '"' + content.replace("\"", "\"\"") + '"';
    }
}
