package weatherlap.reports.format;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.function.UnaryOperator;

/** What a file will hold. */
@FunctionalInterface
public interface Content {
    /** Writes all of it; the caller closes the stream. */
    void writeTo(OutputStream out) throws IOException;

    /** Bytes that are there already. */
    static Content of(byte[] bytes) {
        return out -> out.write(bytes);
    }

    /** A text, as UTF-8. */
    static Content of(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }

    /** All of it, a text in UTF-8. */
    default String text() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        writeTo(bytes);
        return bytes.toString(StandardCharsets.UTF_8);
    }

    /** This text, changed when it is written. */
    default Content changed(UnaryOperator<String> change) {
        return out -> of(change.apply(text())).writeTo(out);
    }

    /**
     * A picture as a file of its own.
     *
     * @param svg the element
     */
    static Content svg(String svg) {
        return of("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + svg + "\n");
    }
}
