package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reports set the two methods side by side that the user names, and name no third one as if it were one of them. */
class PairsTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({
        "'full_flange,insert', full-flange, insert, full-frame",
        "'full_frame,insert', full-frame, insert, full-flange",
        "'full-flange,full-frame', full-flange, full-frame, insert",
        "'insert,full_frame', insert, full-frame, full-flange"
    })
    void rulePicturesAndTitleNameThePair(String pair, String first, String second, String third) throws IOException {
        Path report = folder.resolve("report");
        assertThat(compare("vinyl_siding", pair, report).status()).isZero();

        assertThat(Files.readString(report.resolve("report.html")))
                .contains(Character.toUpperCase(first.charAt(0)) + first.substring(1) + " or " + second);
        List<String> rules = Files.readAllLines(report.resolve("rule.csv"));
        assertThat(rules.get(1)).startsWith("always_" + first.replace('-', '_'));
        assertThat(rules.get(2)).startsWith("always_" + second.replace('-', '_'));
        assertThat(rules.subList(1, rules.size()))
                .noneMatch(rule -> rule.contains(third) || rule.contains(third.replace('-', '_')));
        assertThat(pictures(report)).isNotEmpty().allSatisfy(picture -> assertThat(picture)
                .doesNotContain(third));
        assertThat(pictures(report)).anyMatch(picture -> picture.contains(first + " less " + second));
        assertThat(Files.readString(report.resolve("assumptions/scenario.toml")))
                .contains("methods = \"" + pair.replace('-', '_') + "\"");
    }

    /** The report says that full-frame stands in the place of full-flange where no flanged unit fits. */
    @Test
    void behindBrickFullFrameStandsInTheOthersPlace() throws IOException {
        Path report = folder.resolve("report");
        Cli run = compare("brick_veneer", "full_flange,insert", report);
        assertThat(run.status()).isZero();
        assertThat(Files.readString(report.resolve("report.html")))
                .contains("full-frame")
                .contains("No flanged unit fits behind brick or stucco");
        assertThat(Files.readString(report.resolve("openings.csv"))).doesNotContain(",full_flange,");
    }

    @Test
    void aPairThatIsNoneIsRefused() {
        Cli run = Cli.run("compare", "--methods", "insert,insert", "--out", folder.resolve("report"));
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("methods").contains("full_frame,insert");
        assertThat(folder.resolve("report")).doesNotExist();
    }

    @Test
    void aBreakEvenNamesThePair() throws IOException {
        Path found = folder.resolve("found");
        Cli run = Cli.run(
                "breakeven",
                houses("vinyl_siding"),
                "--methods",
                "full_frame,insert",
                "--vary",
                "repair_cost_usd",
                "--set",
                "draws=16",
                "--out",
                found);
        assertThat(run.status()).isZero();
        assertThat(Files.readString(found.resolve("breakeven.csv"))).doesNotContain("full_flange");
        assertThat(Files.readString(found.resolve("charts/repair_cost_usd.svg")))
                .contains("full-frame")
                .doesNotContain("full-flange");
    }

    private Cli compare(String cladding, String pair, Path report) throws IOException {
        return Cli.run("compare", houses(cladding), "--methods", pair, "--draws", 16, "--quiet", "--out", report);
    }

    /** The house with siding of {@link SmallPortfolio}, clad in this. */
    private Path houses(String cladding) throws IOException {
        Path houses = SmallPortfolio.write(folder.resolve("houses"));
        for (String table : List.of("houses.csv", "elevations.csv", "openings.csv")) {
            Path file = houses.resolve(table);
            Files.write(
                    file,
                    Files.readAllLines(file).stream()
                            .filter(line -> !line.startsWith("h2,"))
                            .map(line -> line.replace("vinyl_siding", cladding))
                            .toList());
        }
        return houses;
    }

    private static List<String> pictures(Path report) throws IOException {
        try (Stream<Path> charts = Files.list(report.resolve("charts"))) {
            return charts.filter(chart -> chart.toString().endsWith(".svg"))
                    .map(chart -> {
                        try {
                            return Files.readString(chart);
                        } catch (IOException e) {
                            throw new java.io.UncheckedIOException(e);
                        }
                    })
                    .toList();
        }
    }
}
