package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The same input and seed give the same bytes, whatever the machine is set to. Version and threads are held elsewhere. */
class SameBytesTest {
    @TempDir
    private static Path folder;

    private static Path houses;
    private static Path first;

    @BeforeAll
    static void compareOnce() throws IOException {
        folder = folder.toRealPath();
        houses = SmallPortfolio.write(folder.resolve("houses"));
        first = folder.resolve("first");
        assertThat(Cli.run(arguments(first)).status()).isZero();
    }

    private static Object[] arguments(Path out) {
        return new Object[] {"compare", houses, "--out", out, "--draws", 16, "--seed", 5, "--threads", 2, "--quiet"};
    }

    @ParameterizedTest
    @CsvSource({"de-DE,Europe/Berlin", "tr-TR,Pacific/Apia", "ar-EG-u-nu-arab,Asia/Kathmandu"})
    void inEveryLanguageAndZone(String language, String zone) throws IOException {
        Locale before = Locale.getDefault();
        TimeZone zoneBefore = TimeZone.getDefault();
        Path out = folder.resolve(language);
        try {
            Locale.setDefault(Locale.forLanguageTag(language));
            TimeZone.setDefault(TimeZone.getTimeZone(zone));
            Cli cli = Cli.run(arguments(out));
            assertThat(cli.status()).as(cli.err()).isZero();
        } finally {
            Locale.setDefault(before);
            TimeZone.setDefault(zoneBefore);
        }
        assertSame(out);
    }

    @Test
    void withAnotherCharsetAndNumberOfThreadsInAProcessOfItsOwn() throws Exception {
        Path out = folder.resolve("latin");
        Object[] arguments = arguments(out);
        arguments[9] = 1;
        Cli cli = OwnProcess.start(
                        Files.createDirectories(folder.resolve("logs")),
                        List.of(
                                "-Dfile.encoding=ISO-8859-1",
                                "-Dsun.jnu.encoding=ANSI_X3.4-1968",
                                "-Duser.language=tr"),
                        arguments)
                .ended();
        assertThat(cli).isEqualTo(new Cli(0, cli.out(), ""));
        assertSame(out);
    }

    /** Java's own arithmetic is the same everywhere since 17; what a later runtime changes in its libraries would show here. */
    @Test
    void onALaterJava() throws Exception {
        Path java = laterJava();
        assumeTrue(Files.isDirectory(java), "no later Java here");
        Path out = folder.resolve("later");
        Cli cli = OwnProcess.start(Files.createDirectories(folder.resolve("logs")), java, List.of(), arguments(out))
                .ended();
        assertThat(cli.status()).as(cli.err()).isZero();
        assertSame(out);
    }

    private static Path laterJava() throws IOException {
        Path beside = Path.of(System.getProperty("java.home")).toRealPath().getParent();
        try (Stream<Path> homes = Files.list(beside)) {
            return homes.filter(home -> home.getFileName().toString().matches(".*\\b(21|25)\\b.*"))
                    .filter(home -> Files.isExecutable(home.resolve("bin/java")))
                    .sorted()
                    .reduce((a, b) -> b)
                    .orElse(beside.resolve("none"));
        }
    }

    private static void assertSame(Path out) throws IOException {
        Map<String, Path> files = Outputs.files(first);
        assertThat(Outputs.files(out).keySet()).isEqualTo(files.keySet());
        for (Map.Entry<String, Path> file : files.entrySet()) {
            assertThat(out.resolve(file.getKey())).hasSameBinaryContentAs(file.getValue());
        }
    }
}
