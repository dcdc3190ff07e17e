package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.portfolio.PortfolioTables;
import weatherlap.datasets.table.Schema;

/** The tables to fill in. */
class TemplateTest {
    @TempDir
    private static Path folder;

    private static Path template;

    @BeforeAll
    static void write() {
        template = folder.resolve("my houses");
        Cli cli = Cli.run("generate", "--template", "--out", template);
        assertThat(cli.status()).isZero();
        assertThat(cli.err()).contains("NOTES.txt", "next: weatherlap check \"");
    }

    @Test
    void theExampleIsSoundAndTheNotesAreNoInTheWay() {
        Cli cli = Cli.run("check", template);
        assertThat(cli.status()).isZero();
        assertThat(cli.out()).isEqualTo("1 house, 1 opening: nothing wrong\n");
    }

    @Test
    void whatComesNextKeepsTheInputs() {
        Path shop = folder.resolve("shop");
        assertThat(Cli.run("assumptions", "--out", shop).status()).isZero();
        assertThat(Cli.run("check", template, "--assumptions", shop, "--set", "crew_size=3")
                        .err())
                .contains("next: weatherlap compare \"" + template + "\" --assumptions " + shop
                        + " --set crew_size=3 --out report");
    }

    @Test
    void everyColumnStandsInItsTableAndInTheList() throws IOException {
        List<String> listed = Files.readAllLines(template.resolve("columns.csv"));
        int columns = 0;
        for (Schema table : PortfolioTables.ALL) {
            assertThat(Files.readAllLines(template.resolve(table.file())))
                    .hasSize(2)
                    .first()
                    .isEqualTo(String.join(",", table.names()));
            assertThat(listed)
                    .anyMatch(line ->
                            line.startsWith(table.file() + "," + table.names().get(0) + ",yes,"));
            columns += table.columns().size();
        }
        assertThat(listed).hasSize(columns + 1);
    }

    @Test
    void rowsOfNothingButCommasAreWhatSpreadsheetsLeaveBehind() throws IOException {
        Path edited = folder.resolve("edited");
        Files.createDirectories(edited);
        for (Schema table : PortfolioTables.ALL) {
            String blank = ",".repeat(table.columns().size() - 1) + "\n";
            Files.writeString(
                    edited.resolve(table.file()), Files.readString(template.resolve(table.file())) + blank + blank);
        }
        assertThat(Cli.run("check", edited).out()).startsWith("1 house, 1 opening");
    }

    /** The short start by workbook and by CSV: the same houses, and the example is warned of among others. */
    @Test
    void theShortStartIsSoundByWorkbookAndByCsv() throws IOException {
        for (Path asked : List.of(folder.resolve("short.xlsx"), folder.resolve("short"))) {
            assertThat(Cli.run("generate", "--template", "--short", "--out", asked)
                            .status())
                    .isZero();
            Cli checked = Cli.run("check", asked);
            assertThat(checked.out()).isEqualTo("1 house, 3 openings: nothing wrong, 1 warning\n");
            assertThat(checked.err()).contains("what the short table leaves out is taken as usual");
        }
        Path mine = folder.resolve("mine.csv");
        Files.writeString(
                mine,
                Files.readString(folder.resolve("short/windows.csv"))
                        + "H1,S,1,35.5,59.5,double_hung,aluminum,vinyl_siding\n");
        assertThat(Cli.run("check", mine).err()).contains("mine.csv:2:house: this is the example house");
        assertThat(Cli.run("generate", "--houses", 1, "--short", "--out", folder.resolve("no"))
                        .status())
                .isEqualTo(2);
    }

    @Test
    void theExampleAmongHousesOfOnesOwnIsWarnedOf() throws IOException {
        Path mine = folder.resolve("with-example");
        Files.createDirectories(mine);
        for (Schema table : PortfolioTables.ALL) {
            String rows = Files.readString(template.resolve(table.file()));
            String own = rows.lines().skip(1).findFirst().orElseThrow().replace("EXAMPLE", "H1") + "\n";
            Files.writeString(mine.resolve(table.file()), rows + own);
        }
        Cli cli = Cli.run("check", mine);
        assertThat(cli.err()).contains("warning: houses.csv:2:house_id: this is the example house");
        assertThat(cli.out()).isEqualTo("2 houses, 2 openings: nothing wrong, 1 warning\n");
        Path houses = mine.resolve("houses.csv");
        Files.writeString(
                houses,
                Files.readString(houses).replace("EXAMPLE,A made-up house: delete this row", "EXAMPLE,5 Ash Way"));
        assertThat(Cli.run("check", mine).out()).isEqualTo("2 houses, 2 openings: nothing wrong\n");
    }

    @Test
    void anEditedTemplateIsNeverReplaced() throws IOException {
        Path mine = folder.resolve("mine");
        assertThat(Cli.run("generate", "--template", "--out", mine).status()).isZero();
        Files.writeString(mine.resolve("houses.csv"), "house_id\n");
        Cli cli = Cli.run("generate", "--template", "--out", mine, "--force");
        assertThat(cli.status()).isEqualTo(2);
        assertThat(cli.err()).contains("was edited");
    }

    @Test
    void eitherATemplateOrMadeUpHouses() {
        Path out = folder.resolve("neither");
        assertThat(Cli.run("generate", "--out", out).err()).contains("--houses N", "--template");
        assertThat(Cli.run("generate", "--template", "--houses", 3, "--out", out)
                        .status())
                .isEqualTo(2);
        assertThat(Cli.run("generate", "--template", "--jobs", 3, "--out", out).err())
                .contains("go with --houses, not with --template");
        assertThat(out).doesNotExist();
    }

    @Test
    void aMissingPortfolioIsShownTheWayToBegin() {
        Path none = folder.resolve("none");
        assertThat(Cli.run("check", none).err()).contains("weatherlap generate --template --out ");
    }

    @Test
    void theOnlyHouseNeedsNoNaming() {
        Path sheet = folder.resolve("sheet");
        assertThat(Cli.run("crewsheet", template, "--method", "full-flange", "--out", sheet)
                        .status())
                .isZero();
        assertThat(sheet.resolve("run.json")).content().contains("\"house\" : \"EXAMPLE\"");
        assertThat(Cli.run("crewsheet", "--method", "insert", "--out", folder.resolve("no"))
                        .err())
                .contains("--house ID is missing", "60 houses");
    }
}
