package weatherlap.reports.output;

import java.io.IOException;
import java.io.OutputStream;

/** What a file will hold. */
@FunctionalInterface
public interface Content {
    /** Writes all of it; the caller closes the stream. */
    void writeTo(OutputStream out) throws IOException;

    /** Bytes that are there already. */
    static Content of(byte[] bytes) {
        return out -> out.write(bytes);
    }
}
