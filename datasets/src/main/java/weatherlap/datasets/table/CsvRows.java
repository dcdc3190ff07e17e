package weatherlap.datasets.table;

import com.univocity.parsers.common.TextParsingException;
import com.univocity.parsers.csv.CsvParser;
import com.univocity.parsers.csv.CsvParserSettings;
import com.univocity.parsers.csv.UnescapedQuoteHandling;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * The rows of a CSV file one after another, each held against the schema; nothing is kept. Rows with problems are passed on too, marked
 * as not sound. Blank lines, and lines of nothing but commas as spreadsheets leave behind, are passed over.
 */
public final class CsvRows implements Rows {
    private static final int MOST_COLUMNS = 1000;
    private static final int LONGEST_CELL = 20_000;

    private final Schema schema;
    private final Problems problems;
    private final CsvParser parser;
    private final Header header;
    private final Predicate<String[]> wanted;
    private int nextLine;
    private Row next;
    private boolean empty = true;
    private boolean cutShort;

    private CsvRows(Problems problems, CsvParser parser, Header header, Predicate<String[]> wanted) {
        this.schema = header.schema();
        this.problems = problems;
        this.parser = parser;
        this.header = header;
        this.wanted = wanted;
        this.nextLine = line(parser);
        this.next = advance();
    }

    /** Reads the header; empty where the file cannot be read as this table at all, which is reported. */
    public static Optional<CsvRows> open(Source source, Schema schema, Problems problems) {
        return open(source, schema, problems, header -> cells -> true);
    }

    /** Those rows alone that hold such a text in a column; the others are passed over and not checked. */
    public static Optional<CsvRows> openThose(
            Source source, Schema schema, String column, Predicate<String> text, Problems problems) {
        return open(source, schema, problems, header -> cells -> text.test(header.text(cells, column)));
    }

    private static Optional<CsvRows> open(
            Source source, Schema schema, Problems problems, Function<Header, Predicate<String[]>> wanted) {
        CsvParser parser = new CsvParser(settings(Separator.COMMA));
        try {
            Reader text = new BufferedReader(PlainText.of(source.bytes().open()));
            Separator separator = Separator.of(text, schema);
            parser = new CsvParser(settings(separator));
            parser.beginParsing(text);
            int line = line(parser);
            String[] names = parser.parseNext();
            while (names != null && (isBlank(names) || Separator.isOwnLine(names[0]))) {
                line = line(parser);
                names = parser.parseNext();
            }
            if (names == null) {
                problems.error(
                        schema.file(), "is empty; a header row is expected: " + String.join(",", schema.names()));
                parser.stopParsing();
                return Optional.empty();
            }
            Optional<Header> header = Header.of(names, line, separator, schema, problems);
            if (header.isEmpty()) {
                parser.stopParsing();
            }
            CsvParser begun = parser;
            return header.map(known -> new CsvRows(problems, begun, known, wanted.apply(known)));
        } catch (IOException | TextParsingException | UncheckedIOException | IllegalStateException e) {
            report(schema, problems, 1, e);
            parser.stopParsing();
            return Optional.empty();
        }
    }

    private static CsvParserSettings settings(Separator separator) {
        CsvParserSettings settings = new CsvParserSettings();
        settings.getFormat().setDelimiter(separator.mark());
        settings.getFormat().setLineSeparator("\n");
        settings.setCommentProcessingEnabled(false);
        settings.setKeepQuotes(true);
        settings.setKeepEscapeSequences(true);
        settings.setUnescapedQuoteHandling(UnescapedQuoteHandling.STOP_AT_DELIMITER);
        settings.setSkipEmptyLines(false);
        settings.setNullValue("");
        settings.setEmptyValue("");
        settings.setReadInputOnSeparateThread(false);
        settings.setInputBufferSize(1 << 16);
        settings.setMaxColumns(MOST_COLUMNS);
        settings.setMaxCharsPerColumn(LONGEST_CELL);
        return settings;
    }

    /** Physical line on which the next record begins. */
    private static int line(CsvParser parser) {
        return Math.toIntExact(parser.getContext().currentLine()) + 1;
    }

    /** The columns, and notes that the file keeps beside them. */
    public Schema schema() {
        return schema;
    }

    /** As the header has them, those that are known by the names of their columns. */
    public List<String> headings() {
        return header.names();
    }

    /** Whether anything read until now did not stand as tables have it. */
    boolean isAsTyped() {
        return header.isAsTyped();
    }

    @Override
    public boolean hasNext() {
        return next != null;
    }

    @Override
    public Row next() {
        if (next == null) {
            throw new NoSuchElementException();
        }
        Row row = next;
        next = advance();
        return row;
    }

    /** Whether there were rows where there must be and all of them were read, once there is no next one; that some lack is reported. */
    public boolean checkWhole() {
        boolean lacking = empty && schema.needsRows();
        if (lacking && !cutShort) {
            problems.error(schema.file(), "has a header and no rows");
        }
        return !lacking && !cutShort;
    }

    /** Whether the reading had to end before the file did. */
    public boolean isCutShort() {
        return cutShort;
    }

    @Override
    public void close() {
        parser.stopParsing();
    }

    private Row advance() {
        int line = nextLine;
        try {
            for (String[] cells = parser.parseNext(); cells != null; cells = parser.parseNext()) {
                line = nextLine;
                nextLine = line(parser);
                if (!isBlank(cells) && wanted.test(cells)) {
                    empty = false;
                    return header.row(cells, line, problems);
                }
            }
        } catch (TextParsingException | UncheckedIOException | IllegalStateException e) {
            report(schema, problems, line, e);
            cutShort = true;
        }
        return null;
    }

    private static boolean isBlank(String[] cells) {
        for (String cell : cells) {
            if (!cell.isBlank()) {
                return false;
            }
        }
        return true;
    }

    /** Says why the parser gave up: text that is no text, a cell or a row without end, or a failing disk. */
    private static void report(Schema schema, Problems problems, int line, Exception thrown) {
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            if (cause instanceof PlainText.NotText notText) {
                problems.error(schema.file(), notText.line(), "", notText.getMessage());
                return;
            }
            if (cause instanceof IOException) {
                problems.error(schema.file(), "cannot be read: " + cause.getMessage());
                return;
            }
        }
        boolean longCell = String.valueOf(thrown.getMessage()).contains("maximum number of characters");
        problems.error(
                schema.file(),
                line,
                "",
                longCell
                        ? "has a cell of more than " + LONGEST_CELL
                                + " characters (a quote that is never closed?); nothing below was read"
                        : "has more than " + MOST_COLUMNS + " columns; nothing below was read");
    }
}
