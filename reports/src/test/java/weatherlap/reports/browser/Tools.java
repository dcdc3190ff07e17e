package weatherlap.reports.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/** Programs that these tests need and the build does not. */
final class Tools {
    private static final String AXE = "axe-core@4.10.3";
    /** Of this process alone: two of them test at the same time. */
    private static final Path AXE_FOLDER = Path.of("target", "axe" + System.getProperty("surefire.forkNumber", ""));

    private static final Path AXE_SCRIPT = AXE_FOLDER.resolve("node_modules/axe-core/axe.min.js");

    private Tools() {}

    static Path chromium() {
        return Stream.of("chromium", "chromium-browser")
                .flatMap(name -> onPath(name).stream())
                .findFirst()
                .orElseGet(() -> missing("Chromium is not installed"));
    }

    /** The office program that opens the workbook. */
    static Path office() {
        return onPath("soffice").orElseGet(() -> missing("LibreOffice is not installed"));
    }

    /**
     * Has the office program read workbooks and write them in another form, in one start of it.
     *
     * @param folder for its settings and what it says
     * @param form as the program names it
     */
    static void convert(Path office, Path folder, String form, Path into, List<Path> books)
            throws IOException, InterruptedException {
        Path log = folder.resolve("office.log");
        List<String> command = new ArrayList<>(List.of(
                office.toString(),
                "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                "--headless",
                "--convert-to",
                form,
                "--outdir",
                into.toString()));
        books.forEach(book -> command.add(book.toString()));
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        assertThat(process.waitFor(180, TimeUnit.SECONDS)).as("ended in time").isTrue();
        assertThat(process.exitValue()).as(Files.readString(log)).isZero();
    }

    /** The accessibility checker axe-core, fetched by npm into the build folder the first time. */
    static String axe() throws IOException, InterruptedException {
        if (!Files.exists(AXE_SCRIPT)) {
            Path npm = onPath("npm").orElseGet(() -> missing("npm is not installed, which fetches axe-core"));
            Process install = new ProcessBuilder(
                            npm.toString(),
                            "install",
                            "--prefix",
                            AXE_FOLDER.toString(),
                            "--no-save",
                            "--ignore-scripts",
                            "--no-audit",
                            "--no-fund",
                            AXE)
                    .redirectErrorStream(true)
                    .redirectOutput(Files.createTempFile("axe", ".log").toFile())
                    .start();
            if (!install.waitFor(120, TimeUnit.SECONDS) || install.exitValue() != 0 || !Files.exists(AXE_SCRIPT)) {
                install.destroyForcibly();
                missing("npm could not fetch " + AXE);
            }
        }
        return Files.readString(AXE_SCRIPT);
    }

    private static Optional<Path> onPath(String program) {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .map(folder -> Path.of(folder, program))
                .filter(Files::isExecutable)
                .findFirst();
    }

    private static <T> T missing(String what) {
        if ("true".equals(System.getenv("WEATHERLAP_REQUIRE_BROWSER"))) {
            return fail(what + ", and WEATHERLAP_REQUIRE_BROWSER is true");
        }
        Assumptions.abort(what + ": its tests are skipped");
        throw new IllegalStateException(what);
    }
}
