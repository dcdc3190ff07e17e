package weatherlap.reports.output;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URLConnection;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.jar.Manifest;

/** What the build wrote into the manifest of the jar. */
public final class Version {
    private Version() {}

    public static String current() {
        String version = manifest().getValue(Attributes.Name.IMPLEMENTATION_VERSION);
        return version == null ? "(unpackaged)" : version;
    }

    /** Of the jar that is running, also where it became part of a runtime; without attributes where the program runs from folders. */
    public static Attributes manifest() {
        try {
            Manifest manifest = Version.class.getModule().isNamed() ? inRuntime() : inJar();
            return manifest == null ? new Attributes() : manifest.getMainAttributes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Manifest inRuntime() throws IOException {
        try (InputStream in = Version.class.getModule().getResourceAsStream(JarFile.MANIFEST_NAME)) {
            return in == null ? null : new Manifest(in);
        }
    }

    private static Manifest inJar() throws IOException {
        URLConnection own = Version.class.getResource("Version.class").openConnection();
        return own instanceof JarURLConnection jar ? jar.getManifest() : null;
    }
}
