package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CallbacksCommandTest {
    @TempDir
    private static Path folder;

    private static Path made;
    private static Path fitted;
    private static Cli run;

    /** Three hundred jobs of a made-up shop whose level is known. */
    @BeforeAll
    static void fit() {
        made = folder.resolve("made");
        assertThat(Cli.run("generate", "--houses", 1, "--jobs", 300, "--seed", 3, "--out", made)
                        .status())
                .isZero();
        fitted = folder.resolve("fitted");
        run = Cli.run("callbacks", made, "--out", fitted);
    }

    @Test
    void writesWhatItPromises() {
        assertThat(run.err()).contains("the fitted level is in ", "--assumptions ");
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("Of 100 windows like these done by insert, about ");
        assertThat(fitted.toFile().list())
                .containsExactlyInAnyOrder(
                        "columns.json",
                        "seen-expected.csv",
                        "callbacks.html",
                        "callbacks.pdf",
                        "charts",
                        "assumptions",
                        "run.json");
    }

    /** The truth differs from the tables; its level lies within half and twice the one that 300 jobs give. */
    @Test
    void comesNearTheTruthOfTheShop() throws IOException {
        Map<String, Double> truth = Files.readAllLines(made.resolve("true-callbacks.csv")).stream()
                .skip(1)
                .map(line -> line.split(","))
                .collect(Collectors.toMap(cells -> cells[0].replace('_', '-'), cells -> Double.parseDouble(cells[1])));
        List<String[]> seen = Files.readAllLines(fitted.resolve("seen-expected.csv")).stream()
                .map(line -> line.split(","))
                .filter(cells -> cells[0].equals("method"))
                .toList();
        assertThat(seen).hasSizeBetween(2, truth.size());
        for (String[] row : seen) {
            double level = Double.parseDouble(row[6]) / Double.parseDouble(row[5]);
            assertThat(Math.log(level / truth.get(row[1].toLowerCase(java.util.Locale.ROOT))))
                    .as(row[1])
                    .isCloseTo(0, within(Math.log(2)));
        }
    }

    @Test
    void theFittedTablesSayWhatTheyRestOnAndServe() throws IOException {
        assertThat(Files.readString(fitted.resolve("assumptions/lap-faults.csv")))
                .contains(",own records,", "leak calls in ", " window-years of 300 jobs");
        assertThat(Files.readString(fitted.resolve("assumptions/scenario.toml")))
                .contains("basis = \"own records\"");
        Cli compare = Cli.run(
                "compare",
                "--assumptions",
                fitted.resolve("assumptions"),
                "--draws",
                16,
                "--out",
                folder.resolve("report"));
        assertThat(compare.err()).isNotEmpty();
        assertThat(compare.status()).isZero();
        assertThat(Files.readString(folder.resolve("report/report.html"))).contains("the shop\u2019s own records");
    }

    @Test
    void theFamilysSheetGivesAFigureAtTheLevelOfTheRecords() throws IOException {
        Path sheet = folder.resolve("sheet");
        Cli handout = Cli.run("handout", made, "--assumptions", fitted.resolve("assumptions"), "--out", sheet);
        assertThat(handout.status()).isZero();
        String page = Files.readString(sheet.resolve("handout.html"));
        int at = page.indexOf("Leak damage in");
        assertThat(page.substring(at, page.indexOf("</tr>", at))).contains("%");
        assertThat(page).contains("this shop\u2019s own records");
    }

    @Test
    void recordsGivenTwiceAreWarnedOf() {
        Cli again = Cli.run(
                "callbacks", made, "--assumptions", fitted.resolve("assumptions"), "--out", folder.resolve("again"));
        assertThat(again.status()).isZero();
        assertThat(again.err()).contains("or they count twice");
    }

    @Test
    void contradictionsAreRefusedByRowAndNothingIsWritten() throws IOException {
        Path bad = Files.createDirectories(folder.resolve("bad"));
        Files.writeString(bad.resolve("jobs.csv"), "job_id,method,openings,date\nj,insert,2,2020-01-02\n");
        Files.writeString(bad.resolve("callbacks.csv"), "job_id,called,cause\nj,2019-12-31,leak\nj,2021-05-05,draft\n");
        Cli refused = Cli.run("callbacks", bad, "--out", folder.resolve("none"));
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err())
                .contains(
                        "callbacks.csv:2:called: \"2019-12-31\" is before the job was finished",
                        "callbacks.csv:3:cause: ");
        assertThat(folder.resolve("none")).doesNotExist();
    }

    /** A row that names a measured house is held against it, and its expected calls are those of its windows. */
    @Test
    void theHousesOfAPortfolioStandBehindTheJobs() throws IOException {
        Path records = Files.createDirectories(folder.resolve("records"));
        Files.writeString(records.resolve("callbacks.csv"), "job_id,called,cause\nj,2021-05-05,leak\n");
        String house = Files.readAllLines(made.resolve("houses.csv")).get(1).split(",")[0];
        String jobs = "job_id,house_id,method,openings,date\nj," + house + ",insert,";
        Files.writeString(records.resolve("jobs.csv"), jobs + "2,2020-01-02\n");
        Cli fine = Cli.run("callbacks", records, "--portfolio", made, "--out", folder.resolve("measured"));
        assertThat(fine.err()).doesNotContain("no house");
        assertThat(fine.status()).isZero();
        assertThat(fine.out()).contains("Of 1 job the house was measured.");
        assertThat(Files.readString(folder.resolve("measured/run.json"))).contains("portfolio/houses.csv");
        Files.writeString(records.resolve("jobs.csv"), jobs + "200,2020-01-02\n");
        Cli refused = Cli.run("callbacks", records, "--portfolio", made, "--out", folder.resolve("refused"));
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains("jobs.csv:2:openings: 200 are more than the ");
    }

    @Test
    void whatWasPaidMovesRepairAndReserve() throws IOException {
        assertThat(run.out())
                .contains(" leak calls cost $", "the share of the price kept for them moves from 2.0% to ");
        String scenario = Files.readString(fitted.resolve("assumptions/scenario.toml"));
        String reserve = scenario.substring(scenario.indexOf("[service_reserve]"));
        assertThat(reserve.substring(0, reserve.indexOf("\n\n")))
                .contains("basis = \"own records\"", "other calls within the warranty on 300 jobs with a price");
    }
}
