package weatherlap.reports.cli;

import java.util.List;
import java.util.Optional;
import java.util.jar.Attributes;
import weatherlap.reports.output.Version;

/** What the build wrote into the manifest of the jar. */
record BuildInformation(Attributes manifest) {
    /** Of the program that is running. */
    static BuildInformation current() {
        return new BuildInformation(Version.manifest());
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
