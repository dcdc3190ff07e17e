package weatherlap.reports.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URLConnection;
import java.util.List;
import java.util.Optional;
import java.util.jar.Attributes;
import java.util.jar.Manifest;

/** What the build wrote into the manifest of the jar. */
record BuildInformation(Attributes manifest) {
    /** Of the jar that is running; without attributes where the program runs from folders. */
    static BuildInformation current() {
        try {
            URLConnection own =
                    BuildInformation.class.getResource("BuildInformation.class").openConnection();
            Manifest manifest = own instanceof JarURLConnection jar ? jar.getManifest() : null;
            return new BuildInformation(manifest == null ? new Attributes() : manifest.getMainAttributes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    List<String> lines() {
        return List.of(
                "weatherlap "
                        + value(Attributes.Name.IMPLEMENTATION_VERSION.toString())
                                .orElse("(unpackaged)"),
                "commit: " + commit(),
                "Java: "
                        + value("Java-Version")
                                .map(level -> level + " or newer, built with ")
                                .orElse("built with ")
                        + value("Build-Jdk-Spec").orElse("an unknown one") + ", running on "
                        + System.getProperty("java.version"));
    }

    private String commit() {
        boolean changed = value("Git-Changes").filter("tainted"::equals).isPresent();
        return value("Git-Commit")
                .filter(commit -> commit.matches("[0-9a-f]{40,64}"))
                .map(commit -> commit + (changed ? ", with changes on top of it" : ""))
                .orElse("not known, the build saw no git repository");
    }

    private Optional<String> value(String name) {
        return Optional.ofNullable(manifest.getValue(name));
    }
}
