package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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

    /** A method that a house has in one report alone has no part in the means, and what changed the program stands last. */
    @Test
    void meansAreOfTheHousesThatBothHave() throws Exception {
        Path earlier = folder.resolve("earlier");
        for (var file : Outputs.files(before).entrySet()) {
            Path to = earlier.resolve(file.getKey());
            Files.createDirectories(to.getParent());
            Files.copy(file.getValue(), to);
        }
        List<String> rows = new ArrayList<>(Files.readAllLines(earlier.resolve("houses.csv")));
        assertThat(rows.remove(1)).contains(",full_flange,");
        Files.write(earlier.resolve("houses.csv"), rows);
        Path run = earlier.resolve("run.json");
        Files.writeString(run, Files.readString(run).replaceFirst("(\"version\" : )\"[^\"]*\"", "$1\"0.1.0\""));
        assertThat(Cli.run("diff", earlier, after, town, "--houses", 1).out())
                .contains("  full-flange, 2 houses (1 more in one report alone):\n    price: $")
                .contains("  insert, 3 houses:\n    price: $")
                .containsSubsequence(
                        "version: 0.1.0 -> ",
                        "The average house",
                        "Houses in both: 3",
                        "What changed in the program since then:");
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
