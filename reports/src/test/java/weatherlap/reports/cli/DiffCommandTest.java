package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DiffCommandTest {
    @TempDir
    static Path folder;

    private static Path town;
    private static Path before;
    private static Path after;

    @BeforeAll
    static void run() {
        town = folder.resolve("town");
        before = folder.resolve("before");
        after = folder.resolve("after");
        ran("generate", "--houses", 3, "--out", town);
        ran("compare", town, "--draws", 16, "--out", before);
        ran(
                "compare",
                town,
                "--draws",
                16,
                "--set",
                "gross_margin=0.3",
                "--set",
                "wage.national.carpenter=50",
                "--out",
                after);
    }

    @Test
    void namesRowsHousesAndWhatEachRowDid() throws Exception {
        Path out = folder.resolve("changes");
        Cli diff = Cli.run("diff", before, after, town, "--out", out);
        assertThat(diff.status()).as(diff.err()).isEqualTo(1);
        assertThat(diff.out())
                .contains("scenario.toml gross_margin: value 0.4 -> 0.3")
                .contains("wages.csv national/carpenter: usd_per_hour 27.09 -> 50")
                .contains("Houses in both: 3")
                .contains("Of that change, by row");
        assertThat(Outputs.rows(out.resolve("parts.csv"))).hasSize(3);
        assertThat(Outputs.rows(out.resolve("rows.csv"))).hasSize(3);
        assertThat(Outputs.rows(out.resolve("moves.csv"))).hasSize(4);
    }

    @Test
    void isStillWhereNothingDiffers() {
        Cli diff = Cli.run("diff", before, before);
        assertThat(diff.status()).isZero();
        assertThat(diff.out()).isEqualTo("the same to the byte: every file of the two reports\n");
    }

    @Test
    void refusesHousesThatTheRunsDidNotRead() {
        Cli diff = Cli.run("diff", before, after);
        assertThat(diff.status()).isEqualTo(2);
        assertThat(diff.err())
                .contains("portfolio/houses.csv: is not what the two runs read")
                .contains("name the folder of the houses");
    }

    @Test
    void refusesAFolderThatIsNoReport() {
        Cli diff = Cli.run("diff", town, after);
        assertThat(diff.status()).isEqualTo(2);
        assertThat(diff.err()).contains("is not a report");
    }

    @Test
    void warnsOfAFileThatWasEditedSince() throws Exception {
        Path copy = folder.resolve("copy");
        ran("compare", town, "--draws", 16, "--out", copy);
        Files.writeString(copy.resolve("rule.csv"), "x");
        assertThat(Cli.run("diff", copy, before).err()).contains("rule.csv was changed after the run wrote it");
    }

    private static void ran(Object... line) {
        Cli cli = Cli.run(line);
        assertThat(cli.status()).as(cli.err()).isZero();
    }
}
