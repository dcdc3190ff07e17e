package weatherlap.datasets.climate;

import java.io.BufferedReader;
import java.io.EOFException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPInputStream;
import weatherlap.datasets.table.Source;

/** Lines of a weather file. The old formats name no encoding and hold place names only, so every byte is taken as one character. */
final class TextLines {
    private static final int MOST_CHARACTERS = 400_000_000;
    /** A line for each quarter of an hour of a hundred years. */
    private static final int MOST_LINES = 4_000_000;

    private static final int GZIP_FIRST = 0x1f;
    private static final int GZIP_SECOND = 0x8b;
    /** A UTF-8 byte-order mark, a character for each byte. */
    private static final String MARK = "\u00ef\u00bb\u00bf";

    private TextLines() {}

    /** The same bytes, unpacked where they are gzip. */
    static Source unpacked(Source source) {
        return new Source(source.name(), () -> unpacked(source.bytes().open()));
    }

    private static InputStream unpacked(InputStream bytes) throws IOException {
        PushbackInputStream pushback = new PushbackInputStream(bytes, 2);
        byte[] start = pushback.readNBytes(2);
        pushback.unread(start);
        boolean packed = start.length == 2 && (start[0] & 0xFF) == GZIP_FIRST && (start[1] & 0xFF) == GZIP_SECOND;
        return new Bounded(packed ? new GZIPInputStream(pushback) : pushback);
    }

    /** Ends a stream that holds more than any weather file, such as a few packed kilobytes that unpack without end. */
    private static final class Bounded extends FilterInputStream {
        private long left = MOST_CHARACTERS;

        Bounded(InputStream in) {
            super(in);
        }

        @Override
        public int read() throws IOException {
            int b = in.read();
            count(b < 0 ? 0 : 1);
            return b;
        }

        @Override
        public int read(byte[] buffer, int offset, int length) throws IOException {
            try {
                int n = in.read(buffer, offset, length);
                count(Math.max(0, n));
                return n;
            } catch (EOFException e) {
                throw new IOException("it is cut short", e);
            }
        }

        private void count(int read) throws IOException {
            left -= read;
            if (left < 0) {
                throw new IOException("it is longer than " + MOST_CHARACTERS + " characters");
            }
        }
    }

    /** The first line that is not blank; empty where there is none. */
    static String first(Source source) throws IOException {
        try (BufferedReader lines = reader(source)) {
            char[] start = new char[1 << 16];
            int n = lines.read(start);
            String text = new String(start, 0, Math.max(0, n));
            return text.lines()
                    .map(TextLines::withoutMark)
                    .filter(line -> !line.isBlank())
                    .findFirst()
                    .orElse("");
        }
    }

    static List<String> all(Source source) throws IOException {
        List<String> all = new ArrayList<>();
        try (BufferedReader lines = reader(source)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (all.size() == MOST_LINES) {
                    throw new IOException("it has more than " + MOST_LINES + " lines");
                }
                all.add(all.isEmpty() ? withoutMark(line) : line);
            }
        }
        return all;
    }

    private static String withoutMark(String line) {
        return line.startsWith(MARK) ? line.substring(MARK.length()) : line;
    }

    private static BufferedReader reader(Source source) throws IOException {
        return new BufferedReader(new InputStreamReader(source.bytes().open(), StandardCharsets.ISO_8859_1));
    }
}
