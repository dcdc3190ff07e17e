package weatherlap.datasets.table;

import java.util.Optional;

/**
 * Quotation marks around a cell.
 *
 * @see "RFC 4180, section 2, rules 5 to 7"
 */
final class Quotes {
    private Quotes() {}

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
