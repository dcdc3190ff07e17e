package weatherlap.reports.format;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
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
        private byte[] text;
        private int size;
        private boolean first = true;

        CsvLines(int room) {
            text = new byte[room];
        }

        /** Begins a cell of so many bytes at most. */
        private void next(int most) {
            if (size + most + 2 > text.length) { // a comma before it, a line feed after it
                text = Arrays.copyOf(text, 2 * text.length + most + 2);
            }
            if (!first) {
                text[size++] = ',';
            }
            first = false;
        }

        @Override
        public void text(String cell) {
            int length = cell.length();
            next(length);
            if (length > 0 && !isWord(cell.charAt(0))) {
                any(quoted(defused(cell)));
                return;
            }
            for (int i = 0; i < length; i++) {
                char c = cell.charAt(i);
                if (!isWord(c)) {
                    any(quoted(cell));
                    return;
                }
                text[size + i] = (byte) c;
            }
            size += length;
        }

        /** What stands in a cell as it is, wherever in it. */
        private static boolean isWord(char c) {
            return c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c >= 'A' && c <= 'Z' || c == '_';
        }

        @Override
        public void number(double number, int decimals) {
            next(Decimals.LONGEST);
            int end = Decimals.put(number, decimals, text, size);
            if (end < 0) {
                any(Decimals.fixed(number, decimals));
            } else {
                size = end;
            }
        }

        @Override
        public void nothing() {
            next(0);
        }

        /** Goes on with the cell that was begun. */
        private void any(String cell) {
            byte[] bytes = cell.getBytes(StandardCharsets.UTF_8);
            if (size + bytes.length + 1 > text.length) {
                text = Arrays.copyOf(text, 2 * text.length + bytes.length);
            }
            System.arraycopy(bytes, 0, text, size, bytes.length);
            size += bytes.length;
        }

        void end() {
            text[size++] = '\n';
            first = true;
        }

        byte[] bytes() {
            return Arrays.copyOf(text, size);
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
