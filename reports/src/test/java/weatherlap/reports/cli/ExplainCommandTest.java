package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExplainCommandTest {
    @TempDir
    private Path folder;

    @Test
    void theTreesHaveTheValuesOfTheTable() throws IOException {
        Path portfolio = SmallPortfolio.write(folder.resolve("houses"));
        Path report = folder.resolve("report");
        assertThat(Cli.run("compare", portfolio, "--out", report, "--draws", 50, "--quiet")
                        .status())
                .isZero();
        Cli cli = Cli.run("explain", portfolio, "--opening", "h1/north/b", "--method", "insert", "--set", "draws=50");
        assertThat(cli.status()).isZero();
        List<String> lines = cli.out().lines().toList();
        assertThat(lines.get(0)).isEqualTo("h1/north/b, insert");
        assertThat(root(lines, "glass lost")).isEqualTo(cell(report, "glass_lost_ft2"), within(0.00501));
        assertThat(root(lines, "opening b")).isEqualTo(cell(report, "labour_minutes_mean"), within(0.0501));
        assertThat(root(lines, "material of opening")).isEqualTo(cell(report, "material_usd_mean"), within(0.00501));
        assertThat(root(lines, "chance of leak damage")).isEqualTo(cell(report, "leak_probability"), within(0.0000501));
        assertThat(cli.out()).contains("[labour-steps.csv:", "[sightlines.csv:", "[lap-faults.csv:", "[materials.csv:");
    }

    /** Cut short, a tree is the whole one without its lower branches. */
    @Test
    void treesAreCutAtTheirDepth() {
        String[] opening = {"explain", "--opening", "G0014/front/W1", "--method", "insert"};
        List<String> whole = Cli.run((Object[]) opening).out().lines().toList();
        List<String> cut = Cli.run(Stream.concat(Stream.of(opening), Stream.of("--depth", "2"))
                        .toArray())
                .out()
                .lines()
                .toList();
        assertThat(cut).anyMatch(line -> line.endsWith(" \u2026"));
        assertThat(cut.stream().map(ExplainCommandTest::named))
                .containsExactlyElementsOf(whole.stream()
                        .filter(line -> !line.matches("[\u2502 ] .*"))
                        .map(ExplainCommandTest::named)
                        .toList());
        assertThat(Cli.run("explain", "--opening", "G0014/front/W1", "--depth", 0)
                        .status())
                .isEqualTo(2);
    }

    private static String named(String line) {
        return line.split(": \\d", 2)[0];
    }

    @Test
    void anUnknownOpeningIsBadInput() {
        Cli cli = Cli.run("explain", "--opening", "h1/north/zz");
        assertThat(cli.status()).isEqualTo(2);
        assertThat(cli.err()).startsWith("--opening: there is no \"h1/north/zz\"");
        assertThat(Cli.run("explain", "--opening", "a/b/c", "--method", "both").status())
                .isEqualTo(2);
    }

    /** The value at the root of the tree whose name starts so. */
    private static double root(List<String> lines, String name) {
        String line = lines.stream().filter(l -> l.startsWith(name)).findFirst().orElseThrow();
        return Double.parseDouble(line.replaceAll("^[^:]*: ", "")
                .split(" |,")[0]
                .replace("\u202F", "")
                .replace("\u2212", "-"));
    }

    private static double cell(Path report, String column) throws IOException {
        List<String> rows = Files.readAllLines(report.resolve("openings.csv"));
        int c = Arrays.asList(rows.get(0).split(",")).indexOf(column);
        String row = rows.stream()
                .filter(r -> r.startsWith("h1,north,b,insert,"))
                .findFirst()
                .orElseThrow();
        return Double.parseDouble(row.split(",")[c]);
    }
}
