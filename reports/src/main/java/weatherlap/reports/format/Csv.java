package weatherlap.reports.format;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.function.BiConsumer;
import weatherlap.analysis.columns.CellTaker;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.columns.TextParts;
import weatherlap.analysis.tables.TableCells;
import weatherlap.analysis.words.Decimals;
import weatherlap.sim.Kept;

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

    /** What is to be done about a character, by character of ASCII; 0: it stands as it is, wherever in a cell. */
    private static final byte[] MARKS = marks();

    private static final int IN_QUOTES = 1;
    private static final int DOUBLED = 2;
    private static final int FOREIGN = 4;

    /** Bytes of a character, at most. */
    private static final int WIDEST = 3;

    /** Bytes to make room for in a cell, with what stands before it. */
    private static final int ROOM = 12;

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
        int rows = result.count();
        CsvLines lines = new CsvLines(ROOM * rows * result.layout().columns().size());
        for (int row = 0; row < rows; row++) {
            result.give(row, lines);
            lines.end();
        }
        return lines.bytes();
    }

    private static byte[] marks() {
        byte[] marks = new byte[128];
        for (char c = 0; c < marks.length; c++) {
            marks[c] = (byte) (c == '"' ? DOUBLED : TO_QUOTE.indexOf(c) >= 0 ? IN_QUOTES : 0);
        }
        return marks;
    }

    /**
     * A word as UTF-8.
     *
     * @param marks of all its characters
     */
    @SuppressWarnings("ArrayRecordComponent") // nobody else sees it
    private record Word(byte[] bytes, int marks) {
        private static final int MOST_KEPT = 1000;
        private static final Kept<String, Word> KEPT = new Kept<>(MOST_KEPT);

        static Word of(String word) {
            Word kept = KEPT.get(word);
            if (kept != null) {
                return kept;
            }
            CsvLines line = new CsvLines(WIDEST * word.length());
            int marks = line.put(word);
            return KEPT.keep(word, new Word(line.bytes(), marks));
        }
    }

    /** Cells as they are written. */
    private static final class CsvLines implements CellTaker, TextParts {
        private byte[] text;
        private int size;
        private boolean first = true;
        /** Of the text that is put together. */
        private int marks;

        CsvLines(int room) {
            text = new byte[room];
        }

        /** Makes room for so many bytes, and for a comma, quotes and a line feed around them. */
        private void room(int bytes) {
            if (size + bytes + 4 > text.length) {
                text = Arrays.copyOf(text, 2 * text.length + bytes + 4);
            }
        }

        /** Begins a cell of so many bytes at most. */
        private void next(int most) {
            room(most);
            if (!first) {
                text[size++] = ',';
            }
            first = false;
        }

        @Override
        public void text(String cell) {
            next(WIDEST * cell.length());
            int begin = size;
            finish(begin, put(cell));
        }

        @Override
        public <R> void text(R row, BiConsumer<? super R, TextParts> parts) {
            next(0);
            int begin = size;
            marks = 0;
            parts.accept(row, this);
            finish(begin, marks);
        }

        @Override
        public void add(String word) {
            Word known = Word.of(word);
            put(known.bytes);
            marks |= known.marks;
        }

        @Override
        public void add(double number, int decimals) {
            room(Decimals.LONGEST);
            put(number, decimals);
        }

        @Override
        public void number(double number, int decimals) {
            next(Decimals.LONGEST);
            put(number, decimals);
        }

        @Override
        public void nothing() {
            next(0);
        }

        private void put(double number, int decimals) {
            int end = Decimals.put(number, decimals, text, size);
            if (end < 0) {
                put(Decimals.fixed(number, decimals).getBytes(StandardCharsets.UTF_8));
            } else {
                size = end;
            }
        }

        /** Puts a text as it is where there is room for it; gives the marks of all its characters. */
        private int put(String cell) {
            int length = cell.length();
            int found = 0;
            for (int i = 0; i < length; i++) {
                char c = cell.charAt(i);
                found |= c < MARKS.length ? MARKS[c] : FOREIGN;
                text[size + i] = (byte) c;
            }
            if ((found & FOREIGN) != 0) {
                put(cell.getBytes(StandardCharsets.UTF_8));
            } else {
                size += length;
            }
            return found;
        }

        private void put(byte[] bytes) {
            room(bytes.length);
            System.arraycopy(bytes, 0, text, size, bytes.length);
            size += bytes.length;
        }

        /** Quotes and defuses a text that was put as it is; few need it. */
        private void finish(int begin, int found) {
            int length = size - begin;
            boolean plainEnds = length == 0 || isWord(text[begin]) && text[size - 1] != ' ';
            if (!plainEnds || (found & DOUBLED) != 0) {
                String cell = new String(text, begin, length, StandardCharsets.UTF_8);
                size = begin;
                put(quoted(defused(cell)).getBytes(StandardCharsets.UTF_8));
            } else if ((found & IN_QUOTES) != 0) {
                System.arraycopy(text, begin, text, begin + 1, length);
                text[begin] = '"';
                text[size + 1] = '"';
                size += 2;
            }
        }

        /** What stands in a cell as it is, wherever in it. */
        private static boolean isWord(byte c) {
            return c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c >= 'A' && c <= 'Z' || c == '_';
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
