package weatherlap.datasets.table;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The bytes of one input file and the name by which messages call it.
 *
 * @param name file name without its folder
 */
public record Source(String name, Bytes bytes) {
    /** Opens the bytes from the beginning, each time anew. */
    @FunctionalInterface
    public interface Bytes {
        InputStream open() throws IOException;
    }

    /** Text in memory, as UTF-8. */
    public static Source of(String name, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return new Source(name, () -> new ByteArrayInputStream(bytes));
    }

    /** The whole text, with a problem where it is not readable text of at most so many characters. */
    public Optional<String> text(int longest, Problems problems) {
        StringBuilder text = new StringBuilder();
        try (PlainText reader = PlainText.of(bytes.open())) {
            char[] buffer = new char[8192];
            for (int n = reader.read(buffer); n >= 0; n = reader.read(buffer)) {
                text.append(buffer, 0, n);
                if (text.length() > longest) {
                    problems.error(name, "is longer than " + longest + " characters");
                    return Optional.empty();
                }
            }
        } catch (PlainText.NotText e) {
            problems.error(name, e.line(), "", e.getMessage());
            return Optional.empty();
        } catch (IOException e) {
            problems.error(name, "cannot be read: " + e.getMessage());
            return Optional.empty();
        }
        return Optional.of(text.toString());
    }
}
