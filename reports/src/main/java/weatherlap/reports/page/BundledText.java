package weatherlap.reports.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Texts bundled beside the classes. */
final class BundledText {
    private BundledText() {}

    static String of(String name) {
        try (InputStream in = BundledText.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the jar");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(name + " could not be read", e);
        }
    }
}
