package weatherlap.reports.format;

import java.nio.charset.StandardCharsets;
import weatherlap.analysis.columns.CellTaker;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.tables.TableCells;
import weatherlap.analysis.words.Decimals;

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

    /** A cell that holds one is quoted. */
    private static final String TO_QUOTE = "\t\n\r\",;";

    /** Characters to make room for in a cell, with what stands before it. */
    private static final int ROOM = 8;

    private Csv() {}

    /** The whole table. */
    public static Content of(TableCells result) {
        return out -> {
            out.write(header(result.layout()));
            out.write(rows(result));
        };
    }

    /** The header row of a table. */
    public static byte[] header(Layout<?> layout) {
        StringBuilder text = new StringBuilder();
        for (String name : layout.names()) {
            text.append(text.isEmpty() ? "" : ",").append(quoted(name));
        }
        return text.append('\n').toString().getBytes(StandardCharsets.UTF_8);
    }

    /**
     * The rows of a table without its header.
     *
     * @throws IllegalArgumentException for a cell that is empty, or no finite number, where its column wants one
     */
    public static byte[] rows(TableCells result) {
        CsvLines lines =
                new CsvLines(ROOM * result.count() * result.layout().columns().size());
        for (int row = 0; row < result.count(); row++) {
            result.give(row, lines);
            lines.end();
        }
        return lines.bytes();
    }

    /** Cells as they are written. */
    private static final class CsvLines implements CellTaker {
        private final StringBuilder text;
        private boolean first = true;

        CsvLines(int room) {
            text = new StringBuilder(room);
        }

        private StringBuilder next() {
            if (!first) {
                text.append(',');
            }
            first = false;
            return text;
        }

        @Override
        public void text(String cell) {
            next().append(quoted(defused(cell)));
        }

        @Override
        public void number(double number, int decimals) {
            Decimals.append(next(), number, decimals);
        }

        @Override
        public void nothing() {
            next();
        }

        void end() {
            text.append('\n');
            first = true;
        }

        byte[] bytes() {
            return text.toString().getBytes(StandardCharsets.UTF_8);
        }
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

    private static String quoted(String cell) {
        boolean plain = !cell.startsWith(" ") && !cell.endsWith(" ");
        for (int i = 0; plain && i < cell.length(); i++) {
            char c = cell.charAt(i);
            plain = c > ',' ? c != ';' : TO_QUOTE.indexOf(c) < 0;
        }
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
