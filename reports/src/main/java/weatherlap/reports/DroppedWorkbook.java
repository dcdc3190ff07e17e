package weatherlap.reports;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A workbook named alone, as when it is dropped onto the program's icon: its report stands beside it, in a folder named after it, and
 * opens in the browser where a desktop is there.
 */
record DroppedWorkbook(Path workbook) {
    private static final String ENDING = ".xlsx";

    /** The workbook, where it is all that was named. */
    static Optional<DroppedWorkbook> in(String[] arguments) {
        return arguments.length == 1
                        && arguments[0].toLowerCase(Locale.ROOT).endsWith(ENDING)
                        && Files.isRegularFile(Path.of(arguments[0]))
                ? Optional.of(new DroppedWorkbook(Path.of(arguments[0])))
                : Optional.empty();
    }

    /** What to do with it, as words of the command line; an earlier report of it is replaced. */
    String[] command() {
        return new String[] {"compare", workbook.toString(), "--out", folder().toString(), "--force"};
    }

    Path folder() {
        String name = workbook.getFileName().toString();
        return workbook.resolveSibling(name.substring(0, name.length() - ENDING.length()) + "-report");
    }

    /** Opens the report in the browser; without a desktop the message of the command itself, which names the page, is all. */
    void open() {
        Optional<List<String>> opener = opener(System.getProperty("os.name"), System.getenv());
        if (opener.isEmpty()) {
            return;
        }
        String page = folder().resolve("report.html").toAbsolutePath().toString();
        try {
            new ProcessBuilder(opener.get().stream()
                            .map(word -> word.replace("{}", page))
                            .toList())
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            // the message of the command names the page
        }
    }

    /** How a system opens a file, with braces for it; empty where nobody sits before a screen. */
    static Optional<List<String>> opener(String system, Map<String, String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return Optional.of(List.of("rundll32", "url.dll,FileProtocolHandler", "{}"));
        }
        if (name.startsWith("mac")) {
            return Optional.of(List.of("open", "{}"));
        }
        boolean hasScreen = environment.containsKey("DISPLAY") || environment.containsKey("WAYLAND_DISPLAY");
        return hasScreen ? Optional.of(List.of("xdg-open", "{}")) : Optional.empty();
    }
}
