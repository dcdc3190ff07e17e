package weatherlap.reports.diff;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The lines of the change log that say why the same inputs give other numbers than before. */
final class ChangeLog {
    private static final String HEADING = "### ";
    private static final String ITEM = "- ";
    private static final String WHY = "results change because";

    private ChangeLog() {}

    /** The log that comes with the program. */
    static String bundled() {
        try (InputStream in = ChangeLog.class.getResourceAsStream("DEVELOPERS.md")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Reasons given since a version, newest first; every one of the log where it has no such version. */
    static List<String> since(String version, String log) {
        String begin = log.substring(Math.max(0, log.indexOf("\n## Change log")));
        List<String> reasons = new ArrayList<>();
        for (String section : begin.split("\n" + HEADING, -1)) {
            if (section.startsWith(version + ",") || section.startsWith(version + "\n")) {
                break;
            }
            for (String item : section.split("\n" + ITEM, -1)) {
                if (item.startsWith(WHY)) {
                    reasons.add(item.lines()
                            .takeWhile(line -> !line.isBlank())
                            .map(String::strip)
                            .collect(Collectors.joining(" ")));
                }
            }
        }
        return reasons;
    }
}
