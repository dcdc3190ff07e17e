package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScenarioOptionTest {
    @TempDir
    static Path folder;

    private static Path town;
    private static Path sets;

    @BeforeAll
    static void run() {
        town = folder.resolve("town");
        sets = folder.resolve("sets");
        Path shop = folder.resolve("shop");
        ran("generate", "--houses", 4, "--seed", 3, "--out", town);
        ran("assumptions", "--out", shop);
        ran(
                "compare",
                town,
                "--set",
                "draws=16",
                "--scenario",
                "base",
                "--scenario",
                "own=" + shop,
                "--scenario",
                "thin=gross_margin=0.3,crew_size=3",
                "--out",
                sets);
    }

    @Test
    void theSameTablesChangeNothing() throws Exception {
        assertThat(Files.readString(sets.resolve("scenarios.html")))
                .contains("No house changes its plan.")
                .doesNotContain("in 0 houses");
        List<List<String>> rows = Outputs.rows(sets.resolve("scenarios.csv"));
        assertThat(rows).hasSize(4);
        assertThat(rows.get(2).subList(0, 5)).containsExactly("own", rows.get(1).get(1), "0.00", "0.00", "0");
        assertThat(Outputs.rows(sets.resolve("flips.csv")))
                .noneMatch(row -> row.get(0).equals("own"));
    }

    @Test
    void aSetIsWhatARunOfItsOwnSays() throws Exception {
        Path alone = folder.resolve("alone");
        ran("compare", town, "--set", "draws=16", "--set", "gross_margin=0.3", "--set", "crew_size=3", "--out", alone);
        List<String> thin = Outputs.rows(sets.resolve("scenario-methods.csv")).stream()
                .filter(row -> row.get(0).equals("thin") && row.get(1).equals("insert"))
                .findFirst()
                .orElseThrow();
        List<List<String>> houses = Outputs.rows(alone.resolve("houses.csv"));
        int price = houses.get(0).indexOf("price_usd");
        double mean = houses.stream()
                .filter(row -> row.get(2).equals("insert"))
                .mapToDouble(row -> Double.parseDouble(row.get(price)))
                .average()
                .orElseThrow();
        assertThat(Double.parseDouble(thin.get(2))).isCloseTo(mean, within(0.01));
    }

    @Test
    void aRuleIsNeverWorseAtHomeThanAlwaysElsewhere() throws Exception {
        List<List<String>> rules = Outputs.rows(sets.resolve("scenario-rules.csv"));
        assertThat(rules).hasSize(1 + 9);
        assertThat(rules.subList(1, 10)).allMatch(row -> Double.parseDouble(row.get(2)) >= 0);
    }

    @Test
    void writesPageSheetWorkbookAndEachSetsTables() {
        assertThat(List.of(
                        "scenarios.html",
                        "scenarios.pdf",
                        "workbook.xlsx",
                        "charts/scenarios.svg",
                        "charts/flips-by-kind.svg",
                        "assumptions/thin/scenario.toml",
                        "assumptions/own/wages.csv"))
                .allMatch(name -> Files.isRegularFile(sets.resolve(name)));
    }

    @Test
    void aFileOfSetsSaysWhatWordsSay() throws Exception {
        Path file = Files.writeString(folder.resolve("scenarios.toml"), """
                [base]
                [own]
                assumptions = "shop"
                [thin]
                gross_margin = 0.3
                crew_size = 3
                """);
        Path again = folder.resolve("from-file");
        ran("compare", town, "--set", "draws=16", "--scenario-file", file, "--out", again);
        for (String table : List.of("scenarios.csv", "flips-by-kind.csv", "assumptions/thin/scenario.toml")) {
            assertThat(again.resolve(table)).hasSameBinaryContentAs(sets.resolve(table));
        }
        Files.writeString(file, "[a]\n[b]\nassumptions = \"../shop\"\ncrew_size = [3]\n");
        assertThat(Cli.run("compare", town, "--scenario-file", file, "--out", again)
                        .err())
                .contains("scenarios.toml:3:b.assumptions: must be a folder beside this file")
                .contains("scenarios.toml:4:b.crew_size: is neither a number nor text");
    }

    /** Of every way to tell houses apart, the kinds make up all houses and all plans that change. */
    @Test
    void theKindsMakeUpTheWhole() throws Exception {
        List<List<String>> rows = Outputs.rows(sets.resolve("flips-by-kind.csv"));
        long changed = Outputs.rows(sets.resolve("flips.csv")).stream()
                .filter(row -> row.get(0).equals("thin"))
                .count();
        for (String by : List.of("cladding", "stories", "decade built")) {
            List<List<String>> own = rows.stream()
                    .filter(row -> row.get(0).equals("thin") && row.get(1).equals(by))
                    .toList();
            assertThat(own.stream()
                            .mapToInt(row -> Integer.parseInt(row.get(3)))
                            .sum())
                    .isEqualTo(4);
            assertThat(own.stream().mapToLong(row -> Long.parseLong(row.get(4))).sum())
                    .isEqualTo(changed);
        }
    }

    @Test
    void refusesWordsThatNameNoSet() {
        assertThat(Cli.run("compare", town, "--scenario", "base").err()).contains("name at least two sets");
        assertThat(Cli.run("compare", town, "--scenario", "a", "--scenario", "a")
                        .err())
                .contains("two sets are named");
        Cli unknown = Cli.run("compare", town, "--scenario", "a", "--scenario", "b=crew_sizes=3");
        assertThat(unknown.status()).isEqualTo(2);
        assertThat(unknown.err()).contains("crew_size");
    }

    private static void ran(Object... line) {
        Cli cli = Cli.run(line);
        assertThat(cli.status()).as(cli.err()).isZero();
    }
}
