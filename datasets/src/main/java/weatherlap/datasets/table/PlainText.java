package weatherlap.datasets.table;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;

/**
 * Reads UTF-8 and nothing else: a byte-order mark is passed over, every line ends in {@code \n} whatever it ended in, and bytes that
 * are not UTF-8 or characters that no table holds (NUL and other controls) end the reading with {@link NotText}.
 */
final class PlainText extends Reader {
    /** The input is not plain UTF-8 text. */
    static final class NotText extends IOException {
        private final int line;

        NotText(int line, String message) {
            super(message);
            this.line = line;
        }

        /** Physical line, from 1. */
        int line() {
            return line;
        }
    }

    /** What the decoder puts in the place of bytes that are not UTF-8; a text that holds it already was spoilt before. */
    private static final char REPLACEMENT = '\uFFFD';

    private final Reader decoded;
    private int line = 1;
    private boolean afterReturn;

    private PlainText(Reader decoded) {
        this.decoded = decoded;
    }

    static PlainText of(InputStream bytes) throws IOException {
        BufferedInputStream buffered = new BufferedInputStream(bytes);
        buffered.mark(4);
        byte[] start = buffered.readNBytes(3);
        buffered.reset();
        if (start.length >= 2 && (begins(start, 0xFE, 0xFF) || begins(start, 0xFF, 0xFE))) {
            buffered.close();
            throw new NotText(1, "is UTF-16 text; save it as UTF-8");
        }
        if (start.length == 3 && begins(start, 0xEF, 0xBB) && (start[2] & 0xFF) == 0xBF) {
            buffered.skipNBytes(3);
        }
        return new PlainText(new InputStreamReader(buffered, StandardCharsets.UTF_8));
    }

    private static boolean begins(byte[] start, int first, int second) {
        return (start[0] & 0xFF) == first && (start[1] & 0xFF) == second;
    }

    @Override
    public int read(char[] buffer, int offset, int length) throws IOException {
        int n;
        do {
            n = readOnce(buffer, offset, length);
        } while (n == 0 && length > 0);
        return n;
    }

    /** Returns 0 when all that came was the second half of a line end. */
    private int readOnce(char[] buffer, int offset, int length) throws IOException {
        int n = decoded.read(buffer, offset, length);
        int out = offset;
        for (int i = offset; i < offset + n; i++) {
            char c = buffer[i];
            if (c < ' ' || c > '~') { // few are
                if (c == '\n' && afterReturn) {
                    afterReturn = false;
                    continue;
                }
                check(c);
            }
            afterReturn = c == '\r';
            buffer[out++] = afterReturn ? '\n' : c;
        }
        return n < 0 ? n : out - offset;
    }

    private void check(char c) throws NotText {
        if (c == '\n' || c == '\r') {
            line++;
        } else if (c == REPLACEMENT) {
            throw new NotText(line, "is not UTF-8 text");
        } else if (c == 0) {
            throw new NotText(line, "holds a NUL character: not a text file, or UTF-16 without its mark");
        } else if (c != '\t' && !Characters.allowed(c)) {
            throw new NotText(line, "holds " + Characters.name(c) + ", which no page can show");
        }
    }

    @Override
    public void close() throws IOException {
        decoded.close();
    }
}
