package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.Corpus;

/** The shop file with the commands that read it. */
class ShopOptionTest {
    @TempDir
    private Path folder;

    private Path houses;
    private Path shop;

    @BeforeEach
    void write() throws IOException {
        houses = SmallPortfolio.write(folder.resolve("houses"));
        shop = folder.resolve("own");
        Corpus.SHOP.writeGood(shop);
    }

    private static Cli run(Object... words) {
        Cli cli = Cli.run(words);
        assertThat(cli.status()).as(cli.err()).isZero();
        return cli;
    }

    @Test
    void aRunSaysWhichShopItReadAndCanBeMadeAgain() throws IOException {
        Path report = folder.resolve("report");
        run("compare", houses, "--shop", shop, "--draws", 16, "--quiet", "--out", report);
        Path record = report.resolve("run.json");
        assertThat(record).content().contains("\"shop/shop.toml\" : ", "\"shop/logo.svg\" : ");
        Path file = shop.resolve("shop.toml");
        assertThat(run("compare", houses, "--shop", file, "--repeat", record, "--quiet", "--out", folder.resolve("b"))
                        .out())
                .contains("the same to the byte");
        Cli without = Cli.run("compare", houses, "--repeat", record, "--out", folder.resolve("c"));
        assertThat(without.status()).isEqualTo(2);
        assertThat(without.err()).contains("run.json: the run read the shop; name its file with --shop");
        Files.writeString(file, Files.readString(file).replace("weeks = 40", "weeks = 41"));
        Cli changed = Cli.run("compare", houses, "--shop", file, "--repeat", record, "--out", folder.resolve("d"));
        assertThat(changed.err()).contains("shop/shop.toml: is not what the run read");
    }

    /** The shop's numbers take the place of those assumed, what is set by hand stands, and a repeated run keeps to what was. */
    @Test
    void theSeasonIsTheShopsOwn() throws IOException {
        Path report = folder.resolve("season");
        run("compare", houses, "--shop", shop, "--set", "crews=3", "--draws", 16, "--quiet", "--out", report);
        assertThat(report.resolve("summary.json"))
                .content()
                .containsSubsequence(
                        "\"season\"", "\"crews\" : 3", "\"weeks\" : 40", "\"crew_days\" : 600", "\"best_mix\"");
        assertThat(report.resolve("assumptions/scenario.toml"))
                .content()
                .containsSubsequence("[crews]", "set for this run", "[season_weeks]", "own records", "shop.toml");
        assertThat(run(
                                "compare",
                                houses,
                                "--shop",
                                shop,
                                "--repeat",
                                report.resolve("run.json"),
                                "--quiet",
                                "--out",
                                folder.resolve("season-again"))
                        .out())
                .contains("the same to the byte");
        assertThat(report.resolve("report.html"))
                .content()
                .contains("Your season", "Price list", "600 crew days", "Not your own numbers yet: crews.");
    }

    @Test
    void theShopBesideThePortfolioIsTakenAndABadOneRefused() throws IOException {
        Corpus.SHOP.writeGood(houses);
        Path handout = folder.resolve("handout");
        Path crew = folder.resolve("crew");
        run("handout", houses, "--house", "h1", "--out", handout);
        run("crewsheet", houses, "--house", "h1", "--method", "insert", "--out", crew);
        assertThat(handout.resolve("run.json")).content().contains("\"shop/shop.toml\" : ");
        assertThat(crew.resolve("run.json")).content().contains("\"shop/shop.toml\" : ");
        Files.writeString(houses.resolve("shop.toml"), "nmae = \"x\"\n");
        Cli bad = Cli.run("handout", houses, "--house", "h1", "--out", folder.resolve("bad"));
        assertThat(bad.status()).isEqualTo(2);
        assertThat(bad.err()).contains("shop.toml:1:nmae: is not known; did you mean \"name\"?");
        assertThat(Cli.run("check", houses).status()).isEqualTo(2);
        run("check", houses, "--shop", shop);
    }
}
