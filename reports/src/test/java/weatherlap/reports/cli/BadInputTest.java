package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Year;
import java.time.ZoneOffset;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.Corpus;

/**
 * Every bad input of the corpora through the commands that compute, and a fifth of them through {@code check}: exit status 2, every problem on its own line and nothing else, and nothing
 * written. What is only doubtful is warned of.
 */
class BadInputTest {
    @TempDir
    private static Path temporary;

    private static Path good;

    @BeforeAll
    static void writeGoodPortfolio() throws IOException {
        good = temporary.resolve("good");
        Corpus.PORTFOLIO.writeGood(good);
    }

    @TestFactory
    Stream<DynamicTest> portfolios() {
        List<Corpus.Case> cases = Stream.of("corpus/portfolio.txt", "corpus/fit.txt")
                .flatMap(resource -> Corpus.PORTFOLIO.cases(resource).stream())
                .toList();
        return tests("portfolio", cases, folder -> List.of(folder));
    }

    @TestFactory
    Stream<DynamicTest> assumptions() {
        return tests(
                "assumptions",
                Corpus.ASSUMPTIONS.cases("corpus/assumptions.txt"),
                folder -> List.of(good, "--assumptions", folder));
    }

    @TestFactory
    Stream<DynamicTest> weather() {
        return tests(
                "climate",
                Corpus.CLIMATE.cases("corpus/climate.txt"),
                folder -> List.of(good, "--climate", folder.resolve("climate.csv")));
    }

    @TestFactory
    Stream<DynamicTest> shops() {
        return tests("shop", Corpus.SHOP.cases("corpus/shop.txt"), folder -> List.of(good, "--shop", folder));
    }

    @TestFactory
    Stream<DynamicTest> mixes() {
        return Corpus.MIX.cases("corpus/mix.txt").stream()
                .map(each -> DynamicTest.dynamicTest(
                        each.name(),
                        () -> refused(
                                each,
                                folder("mix", each),
                                folder -> List.of("generate", "--houses", 1, "--mix", folder.resolve("mix.csv")))));
    }

    @TestFactory
    Stream<DynamicTest> jobRecords() {
        return alone("jobs", Corpus.JOBS.cases("corpus/jobs.txt"), "calibrate", "jobs.csv");
    }

    @TestFactory
    Stream<DynamicTest> weatherAlone() {
        return alone("weather", Corpus.CLIMATE.cases("corpus/climate.txt"), "exposure", "climate.csv");
    }

    /** Cases with errors through a command that reads one file. */
    private static Stream<DynamicTest> alone(String kind, List<Corpus.Case> cases, String command, String file) {
        return cases.stream()
                .filter(each -> !each.errors().isEmpty())
                .map(each -> DynamicTest.dynamicTest(
                        each.name(),
                        () -> refused(each, folder(kind, each), path -> List.of(command, path.resolve(file)))));
    }

    /** Problems of a portfolio, of the assumptions, of the weather and of the command line come together. */
    @Test
    void everythingAtOnce() throws IOException {
        Path houses = bad(Corpus.PORTFOLIO.cases("corpus/portfolio.txt"), "a negative length");
        Path tables = bad(Corpus.ASSUMPTIONS.cases("corpus/assumptions.txt"), "a negative price");
        Path weather = bad(Corpus.CLIMATE.cases("corpus/climate.txt"), "NaN").resolve("climate.csv");
        Path out = temporary.resolve("none");
        Cli cli = Cli.run("compare", houses, "--assumptions", tables, "--climate", weather, "--out", out);
        assertThat(cli.status()).isEqualTo(2);
        assertThat(cli.notes())
                .hasSize(3)
                .anyMatch(line -> line.startsWith("openings.csv:2:left_in"))
                .anyMatch(line -> line.startsWith("materials.csv:2:price_low"))
                .anyMatch(line -> line.startsWith("climate.csv:5:rain_mm"));
        assertThat(out).doesNotExist();
    }

    @Test
    void foldersThatAreNone() {
        for (String name : List.of("nowhere", "good/houses.csv", "good/houses.csv/x")) {
            Path folder = temporary.resolve(name);
            Cli cli = Cli.run("check", folder);
            assertThat(cli.status()).isEqualTo(2);
            assertThat(cli.notes())
                    .containsExactly(
                            "houses.csv: there is no folder \"" + shortened(folder) + "\"",
                            "elevations.csv: there is no folder \"" + shortened(folder) + "\"",
                            "openings.csv: there is no folder \"" + shortened(folder) + "\"");
        }
    }

    private static String shortened(Path folder) {
        String text = folder.toString();
        return text.length() <= 40 ? text : text.substring(0, 40) + "…";
    }

    private static Stream<DynamicTest> tests(
            String kind, List<Corpus.Case> cases, Function<Path, List<Object>> arguments) {
        return cases.stream()
                .map(each -> DynamicTest.dynamicTest(each.name(), () -> {
                    Path folder = folder(kind, each);
                    if (each.errors().isEmpty()) {
                        warned(each, folder, arguments);
                        return;
                    }
                    refused(each, folder, path -> command("compare", arguments.apply(path)));
                    if (cases.indexOf(each) % 5 == 0) {
                        Cli check = Cli.run(
                                command("check", arguments.apply(folder)).toArray());
                        assertThat(lines(check, folder)).containsExactlyElementsOf(each.errors());
                        assertThat(check.status()).isEqualTo(2);
                    }
                }));
    }

    private static void refused(Corpus.Case each, Path folder, Function<Path, List<Object>> arguments)
            throws IOException {
        if (!Files.exists(folder)) {
            each.writeTo(folder);
        }
        Path out = folder.resolveSibling(folder.getFileName() + "-out");
        List<Path> before = all();
        Cli cli = Cli.run(Stream.concat(arguments.apply(folder).stream(), Stream.of("--out", out))
                .toArray());
        assertThat(lines(cli, folder)).containsExactlyElementsOf(each.errors());
        assertThat(cli.status()).isEqualTo(2);
        assertThat(cli.out()).isEmpty();
        assertThat(all()).isEqualTo(before);
    }

    private static void warned(Corpus.Case each, Path folder, Function<Path, List<Object>> arguments)
            throws IOException {
        each.writeTo(folder);
        Cli cli = Cli.run(command("check", arguments.apply(folder)).toArray());
        assertThat(cli.status()).isZero();
        assertThat(cli.notes().map(line -> line.replaceFirst("^warning: ", "")))
                .containsExactlyElementsOf(each.warnings());
    }

    private static List<Object> command(String name, List<Object> arguments) {
        return Stream.concat(Stream.of(name), arguments.stream()).toList();
    }

    private static List<String> lines(Cli cli, Path folder) {
        return cli.notes()
                .map(line -> Corpus.neutral(line, folder))
                .map(line -> line.replace(
                        "(1700 to " + Year.now(ZoneOffset.UTC) + "); the nearest is " + Year.now(ZoneOffset.UTC),
                        "(1700 to 2026); the nearest is 2026"))
                .toList();
    }

    private static Path folder(String kind, Corpus.Case each) {
        return temporary.resolve(kind + "-" + Integer.toHexString(each.name().hashCode()));
    }

    private static Path bad(List<Corpus.Case> cases, String name) throws IOException {
        Corpus.Case wanted = cases.stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
        Path folder = folder("once", wanted);
        wanted.writeTo(folder);
        return folder;
    }

    private static List<Path> all() throws IOException {
        try (Stream<Path> files = Files.walk(temporary)) {
            return files.sorted().toList();
        }
    }
}
