package weatherlap.datasets.table;

import java.io.IOException;
import java.io.Reader;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/** What stands between the cells of a table: the one mark of these at which the most names of its columns come apart in the header. */
enum Separator {
    COMMA(','),
    SEMICOLON(';'),
    TAB('\t'),
    BAR('|');

    private static final int LONGEST_HEADER = 1 << 16;
    private static final String OWN_LINE = "sep=";

    private final char mark;

    Separator(char mark) {
        this.mark = mark;
    }

    char mark() {
        return mark;
    }

    /** Looks ahead to the header; a text whose header shows none is taken to be separated by commas. */
    static Separator of(Reader marking, Schema schema) throws IOException {
        marking.mark(LONGEST_HEADER);
        char[] start = new char[LONGEST_HEADER];
        int length = 0;
        for (int n = marking.read(start, 0, LONGEST_HEADER); n > 0 && length < LONGEST_HEADER; ) {
            length += n;
            if (header(new String(start, 0, length)).contains("\n")) {
                break;
            }
            n = marking.read(start, length, LONGEST_HEADER - length);
        }
        marking.reset();
        return of(header(new String(start, 0, length)), schema);
    }

    /** What begins with the first line that holds anything; with its line feed where that was reached. */
    private static String header(String text) {
        String rest = text.stripLeading();
        if (isOwnLine(rest)) {
            rest = rest.substring(Math.min(rest.length(), Math.max(0, rest.indexOf('\n') + 1)));
        }
        int end = rest.indexOf('\n');
        return end < 0 ? rest : rest.substring(0, end + 1);
    }

    /** Whether a line does nothing but name the separator, as spreadsheets write it for each other. */
    static boolean isOwnLine(String text) {
        return text.startsWith(OWN_LINE);
    }

    private static Separator of(String header, Schema schema) {
        Headings headings = Headings.of(schema);
        return Arrays.stream(values())
                .reduce((a, b) -> count(b, header, headings) > count(a, header, headings) ? b : a)
                .orElseThrow();
    }

    private static long count(Separator separator, String header, Headings headings) {
        List<String> names = List.of(header.split(Pattern.quote(String.valueOf(separator.mark)), -1));
        return names.stream()
                .map(name -> CsvText.content(name.strip()).orElse("").strip())
                .filter(headings::knows)
                .count();
    }
}
