package weatherlap.reports.output;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import weatherlap.analysis.columns.Column;
import weatherlap.analysis.tables.ResultTable;

/**
 * Result tables as CSV: UTF-8, a header, comma, quotes doubled, lines end in a line feed, numbers to the decimals of the catalogue.
 *
 * <p>A spreadsheet takes a cell that begins with {@code = + - @}, a tab or a line break for a formula, and its author may have been
 * anyone. So a text that would begin so gets an apostrophe before it, and so does a text of which only apostrophes stand before such a
 * character, which makes the rule reversible: {@link #undefused} takes one apostrophe off. Numbers are left alone.
 *
 * @see "RFC 4180; OWASP, CSV injection"
 */
public final class Csv {
    /** The ASCII signs and their full-width twins, which some spreadsheets treat alike. */
    private static final String DANGEROUS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private Csv() {}

    /** The whole table. */
    public static Content of(ResultTable result) {
        return out -> {
            Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
            List<Column> columns = result.schema().columns();
            writeRow(writer, result.schema().names());
            for (int row = 0; row < result.rows(); row++) {
                int at = row;
                writeRow(
                        writer,
                        columns.stream().map(column -> cell(result, at, column)).toList());
            }
            writer.flush();
        };
    }

    /** A text as it stands in a cell, before quoting. */
    static String defused(String text) {
        return looksLikeFormula(text) ? "'" + text : text;
    }

    /** The text that a cell was made from: the way back from what {@link Csv} writes. */
    public static String undefused(String cell) {
        return cell.startsWith("'") && looksLikeFormula(cell) ? cell.substring(1) : cell;
    }

    private static boolean looksLikeFormula(String text) {
        int i = 0;
        while (i < text.length() && text.charAt(i) == '\'') {
            i++;
        }
        while (i < text.length() && text.charAt(i) == ' ') {
            i++;
        }
        return i < text.length() && DANGEROUS.indexOf(text.charAt(i)) >= 0;
    }

    private static String cell(ResultTable result, int row, Column column) {
        if (column.kind() == Column.Kind.TEXT) {
            return defused(result.text(row, column.name()));
        }
        OptionalDouble number = result.number(row, column);
        return number.isEmpty() ? "" : Decimals.fixed(number.getAsDouble(), column.decimals());
    }

    private static void writeRow(Writer writer, List<String> cells) throws IOException {
        for (int i = 0; i < cells.size(); i++) {
            if (i > 0) {
                writer.write(',');
            }
            writer.write(quoted(cells.get(i)));
        }
        writer.write('\n');
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r')
                && !cell.startsWith(" ")
                && !cell.endsWith(" ");
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
