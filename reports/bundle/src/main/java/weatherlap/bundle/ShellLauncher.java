package weatherlap.bundle;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Starts the program on Linux. The launcher of {@code jpackage} asks the machine's package managers twice at each start which package it
 * is of, a quarter of a second, where all is in the same place beside it anyway. Where the system has large pages for whoever asks, Java asks:
 * memory touched for the first time in small ones costs up to a quarter of a run's time.
 */
final class ShellLauncher {
    private static final String SCRIPT = """
            #!/bin/sh
            # Starts the program by the Java that stands beside it. Reached by its own name it needs no other program, by a link readlink.
            case $0 in */*) self=$0 ;; *) self=./$0 ;; esac
            while [ -L "$self" ]; do
                link=$(readlink "$self")
                case $link in /*) self=$link ;; *) self=${self%%/*}/$link ;; esac
            done
            unset JDK_JAVA_OPTIONS # meant for another Java
            pages=
            if [ -e /sys/kernel/mm/transparent_hugepage ]; then pages=-XX:+UseTransparentHugePages; fi
            exec "${self%%/*}/../lib/runtime/bin/java" $pages %s -m %s "$@"
            """;

    private ShellLauncher() {}

    /**
     * Puts the script in the place of the launcher that {@code jpackage} made.
     *
     * @param launcher the one that it made
     * @param flags of Java, none of which holds a sign that a shell reads
     * @param main module and class
     */
    static void replace(Path launcher, List<String> flags, String main) throws IOException {
        Files.delete(launcher);
        Files.writeString(launcher, SCRIPT.formatted(String.join(" ", flags), main));
        if (!launcher.toFile().setExecutable(true, false)) {
            throw new IOException(launcher + " cannot be made executable");
        }
    }
}
