package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands that ask what the answer hangs on. */
class DecisionCommandsTest {
    @TempDir
    private static Path folder;

    private static Path portfolio;

    @BeforeAll
    static void write() throws IOException {
        portfolio = SmallPortfolio.write(folder.resolve("houses"));
    }

    @Test
    void driversRankEveryRowWithARange() throws IOException {
        Path out = folder.resolve("drivers");
        Cli cli = Cli.run(
                "drivers",
                portfolio,
                "--out",
                out,
                "--houses",
                1,
                "--draws",
                4,
                "--points",
                2,
                "--replicates",
                2,
                "--rows",
                2,
                "--information",
                50,
                "--quiet");
        assertThat(cli.err()).isEmpty();
        assertThat(cli.status()).isZero();
        assertThat(cli.out()).contains("1 of 2 houses", "by table", "worth", "Jansen", "workmanship moves it by");
        List<String> rows = Files.readAllLines(out.resolve("drivers.csv"));
        assertThat(rows).hasSizeGreaterThan(200).anyMatch(row -> row.startsWith("scenario,cost_difference,"));
        assertThat(out.resolve("charts").toFile().list())
                .containsExactlyInAnyOrder(
                        "cost_difference-indices.svg", "risk_difference-indices.svg", "cost_difference-swings.svg");
        assertThat(out.resolve("run.json")).content().contains("\"points\" : 2", "\"houses\" : 1");
    }

    @Test
    void breakEvenTriesAChoiceByEachOfItsWordsAlsoAlongTheSideOfAMap() throws IOException {
        Path out = folder.resolve("choice");
        Cli cli = Cli.run(
                "breakeven",
                portfolio,
                "--vary",
                "workmanship",
                "--vary",
                "labour-steps/full_flange",
                "--set",
                "draws=8",
                "--out",
                out,
                "--quiet");
        assertThat(cli.err()).isEmpty();
        assertThat(cli.status()).isZero();
        assertThat(cli.out()).contains("workmanship ", " with careful; ", " with typical, which is in force; ");
        assertThat(Files.readAllLines(out.resolve("choices.csv")))
                .hasSize(4)
                .anyMatch(row -> row.startsWith("workmanship,typical,yes,"));
        assertThat(out.resolve("breakeven.csv")).content().contains("labour-steps/full_flange,");
        assertThat(out.resolve("charts").toFile().list())
                .containsExactlyInAnyOrder("labour-steps-full_flange.svg", "map.svg");
        assertThat(out.resolve("charts").resolve("map.svg")).content().contains(">hurried<");
        Cli ranged = Cli.run("breakeven", portfolio, "--vary", "shelter", "--from", 1, "--out", folder.resolve("none"));
        assertThat(ranged.status()).isEqualTo(2);
        assertThat(ranged.err()).contains("shelter is a choice of words, so it has no range");
    }

    @Test
    void breakEvenOfTwoNamesGivesATableAPictureEachAndAMap() throws IOException {
        Path out = folder.resolve("breakeven");
        Cli cli = Cli.run(
                "breakeven",
                portfolio,
                "--vary",
                "repair_cost_usd",
                "--vary",
                "gross_margin",
                "--from",
                600,
                "--to",
                14_000,
                "--set",
                "draws=20",
                "--out",
                out,
                "--quiet");
        assertThat(cli.err()).isEmpty();
        assertThat(cli.status()).isZero();
        assertThat(cli.out()).contains("repair_cost_usd", "gross_margin");
        assertThat(Files.readAllLines(out.resolve("breakeven.csv")))
                .hasSizeGreaterThanOrEqualTo(3)
                .first()
                .isEqualTo("name,preferred_below,preferred_above,value,low_90,high_90");
        assertThat(out.resolve("charts").toFile().list())
                .containsExactlyInAnyOrder("repair_cost_usd.svg", "gross_margin.svg", "map.svg");
    }

    @Test
    void theSameNameTwiceIsNoMap() {
        Path out = folder.resolve("twice");
        Cli cli =
                Cli.run("breakeven", portfolio, "--vary", "repair_cost_usd", "--vary", "repair_cost_usd", "--out", out);
        assertThat(cli.status()).isEqualTo(2);
        assertThat(cli.err()).contains("--vary: \"repair_cost_usd\" is there twice");
        assertThat(out).doesNotExist();
    }

    /** A region may be called anything, its picture may not. */
    @Test
    void aRowOfAnyNameGetsAPicture() throws IOException {
        Path shop = folder.resolve("shop");
        assertThat(Cli.run("assumptions", "--out", shop).status()).isZero();
        for (String file : List.of("wages.csv", "scenario.toml")) {
            Path table = shop.resolve(file);
            Files.writeString(
                    table,
                    Files.readString(table)
                            .replace("national,", "North & East,")
                            .replace("\"national\"", "\"North & East\""));
        }
        Path out = folder.resolve("region");
        Cli cli = Cli.run(
                "breakeven",
                portfolio,
                "--assumptions",
                shop,
                "--vary",
                "wages/North & East/carpenter",
                "--set",
                "draws=4",
                "--out",
                out);
        assertThat(cli.err()).contains("wages-north___east-carpenter-");
        assertThat(cli.status()).isZero();
        assertThat(out.resolve("charts").toFile().list()).hasSize(1).allMatch(name -> name.endsWith(".svg"));
    }

    @Test
    void unknownNamesAndRangesThatFallAreRefused() {
        Path out = folder.resolve("none");
        Cli cli = Cli.run("breakeven", portfolio, "--vary", "repair_cost", "--out", out);
        assertThat(cli.status()).isEqualTo(2);
        assertThat(cli.err()).contains("repair_cost_usd");
        assertThat(Cli.run("breakeven", portfolio, "--vary", "repair_cost_usd", "--from", 9, "--to", 2, "--out", out)
                        .status())
                .isEqualTo(2);
        assertThat(Cli.run("drivers", portfolio, "--points", 1, "--out", out).err())
                .contains("--points (1)");
        assertThat(out).doesNotExist();
    }
}
