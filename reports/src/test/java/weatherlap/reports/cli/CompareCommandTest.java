package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.InputSource;

class CompareCommandTest {
    @TempDir
    private static Path folder;

    private static Path portfolio;
    private static Path report;
    private static Cli run;

    @BeforeAll
    static void compareOnce() throws IOException {
        portfolio = SmallPortfolio.write(folder.resolve("houses"));
        report = folder.resolve("report");
        run = Cli.run("compare", portfolio, "--out", report, "--draws", 50, "--seed", 3, "--threads", 2);
    }

    @Test
    void endsWellAndSaysTheAnswer() {
        assertThat(run.err()).contains("the report is in ");
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("the average family saves", "price", "full-flange");
    }

    @Test
    void saysWhichAssumptionsAreTheShopsOwn() {
        assertThat(report.resolve("report.html")).content().contains("assumptions as bundled but for scenario.toml;");
    }

    @Test
    void writesEverythingThatItPromises() {
        assertThat(report.toFile().list())
                .containsExactlyInAnyOrder(
                        "report.html",
                        "report.pdf",
                        "appendix.pdf",
                        "workbook.xlsx",
                        "openings.csv",
                        "elevations.csv",
                        "houses.csv",
                        "rule.csv",
                        "season.csv",
                        "price-list.csv",
                        "columns.json",
                        "leaks.csv",
                        "summary.json",
                        "run.json",
                        "assumptions",
                        "charts");
        assertThat(report.resolve("charts")).isDirectoryContaining("glob:**.svg");
        assertThat(report.resolve("assumptions/labour-steps.csv")).exists();
        assertThat(report.resolve("run.json"))
                .content()
                .contains("\"seed\" : 3", "\"draws\" : 50", "portfolio/houses.csv");
    }

    @Test
    void everyHouseStandsOnceForEachMethod() throws IOException {
        List<String> rows = Files.readAllLines(report.resolve("houses.csv"));
        assertThat(rows).hasSize(1 + 3 + 2);
        assertThat(rows.get(1)).startsWith("h1,\"'=1+1 <script>alert(1)</script> \"\"quoted\"\" &");
        assertThat(Files.readAllLines(report.resolve("openings.csv"))).hasSize(1 + 3 * 3 + 2);
        assertThat(Files.readAllLines(report.resolve("elevations.csv"))).hasSize(1 + 2 * 3 + 2);
    }

    @Test
    void thePageIsWholeEscapedAndFetchesNothing() throws Exception {
        String page = Files.readString(report.resolve("report.html"));
        assertThat(page)
                .contains("&lt;script>alert(1)&lt;/script>", "L".repeat(200), "id=\"find-house\"")
                .doesNotContain("<script>alert(1)")
                .doesNotContainPattern("(?i)(src|href)=\"(https?:|//|file:)");
        String xml = page.replaceFirst("<!DOCTYPE html>", "").replaceAll("(?s)<script>.*?</script>", "");
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        assertThat(factory.newDocumentBuilder()
                        .parse(new InputSource(new StringReader(xml)))
                        .getElementsByTagName("svg")
                        .getLength())
                .as("pictures, one of them for phones too; without a site none by the way walls face")
                .isEqualTo(9);
    }

    @Test
    void twoPagesStandAloneAndTheAppendixHoldsTheRest() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(report.resolve("report.pdf").toFile())) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(2);
            assertThat(new PDFTextStripper().getText(pdf))
                    .containsSubsequence("Full-flange or insert", "How sure", "What to do");
        }
        try (PDDocument pdf = Loader.loadPDF(report.resolve("appendix.pdf").toFile())) {
            String text = new PDFTextStripper().getText(pdf);
            assertThat(text)
                    .containsSubsequence(
                            "Full-flange or insert",
                            "The evidence",
                            "By kind of house and wall",
                            "House by house",
                            "How it was worked out",
                            "Assumptions",
                            "To repeat this run");
            assertThat(text.replaceAll("[\\s\u200B]", "")).contains("<script>alert(1)</script>", "L".repeat(200));
            assertThat(pdf.getNumberOfPages()).isBetween(6, 60);
        }
    }

    @Test
    void theSameSeedGivesTheSameBytesWithAnyNumberOfThreads() throws IOException {
        Path again = folder.resolve("again");
        assertThat(Cli.run("compare", portfolio, "--out", again, "--draws", 50, "--seed", 3, "--threads", 1, "--quiet"))
                .isEqualTo(new Cli(0, run.out(), ""));
        try (var files = Files.walk(report)) {
            for (Path file : (Iterable<Path>) files.filter(Files::isRegularFile)::iterator) {
                assertThat(again.resolve(report.relativize(file))).hasSameBinaryContentAs(file);
            }
        }
    }

    @Test
    void aSecondRunIntoTheFolderNeedsForce() {
        assertThat(Cli.run("compare", portfolio, "--out", report, "--quiet"))
                .isEqualTo(new Cli(2, "", report + " is not empty; use --force to replace an earlier output\n"));
    }

    @Test
    void everyProblemOfTheInputIsNamedAndNothingIsWritten() throws IOException {
        Path bad = SmallPortfolio.write(folder.resolve("bad"));
        Path openings = bad.resolve("openings.csv");
        Files.writeString(
                openings,
                Files.readString(openings).replace(",36,54,", ",3O,54,").replace(",bath,", ",bth,"));
        Path out = folder.resolve("none");
        Cli cli = Cli.run("compare", bad, "--out", out, "--set", "crew_sise=3");
        assertThat(cli.status()).isEqualTo(2);
        assertThat(cli.err())
                .contains(
                        "openings.csv:2:frame_width_in: \"3O\" is not a number",
                        "openings.csv:5:room:",
                        "\"bath\"",
                        "crew_size")
                .doesNotContain("\tat ");
        assertThat(out).doesNotExist();
        assertThat(Cli.run("check", bad).status()).isEqualTo(2);
    }

    @Test
    void aCleanPortfolioChecksInALine() {
        Cli cli = Cli.run("check", portfolio, "--quiet");
        assertThat(cli.status()).isZero();
        assertThat(cli.out()).startsWith("2 houses, 4 openings: nothing wrong").hasLineCount(1);
        assertThat(cli.err()).isEmpty();
    }

    @Test
    void anEditedAssumptionChangesTheResult() throws IOException {
        Path assumptions = folder.resolve("assumptions");
        assertThat(Cli.run("assumptions", "--out", assumptions).status()).isZero();
        Path steps = assumptions.resolve("labour-steps.csv");
        String row = Files.readAllLines(steps).get(1);
        String[] cells = row.split(",", 2);
        Files.writeString(steps, Files.readString(steps) + "one_more_step," + cells[1] + "\n");
        Path changed = folder.resolve("changed");
        Cli cli = Cli.run(
                "compare", portfolio, "--assumptions", assumptions, "--out", changed, "--draws", 50, "--seed", 3);
        assertThat(cli.err()).contains("the report is in");
        assertThat(Files.readString(changed.resolve("houses.csv")))
                .isNotEqualTo(Files.readString(report.resolve("houses.csv")));
        assertThat(Files.readString(changed.resolve("report.html"))).contains("one_more_step");
    }

    @Test
    void thePageTellsTheOddsOfALoss() throws IOException {
        assertThat(Files.readString(report.resolve("report.html")))
                .contains("At the price quoted the chance of a loss is", "chance of a loss at that price");
        assertThat(report.resolve("charts/chance-of-more.svg")).exists();
    }

    @Test
    void badOptionsAreBadUsage() {
        assertThat(Cli.run("compare", portfolio, "--threads", 0).status()).isEqualTo(2);
        assertThat(Cli.run("compare", portfolio, "--threads", "x").err()).contains("--threads");
        assertThat(Cli.run("compare", portfolio, "--draws", "many", "--out", folder.resolve("no"))
                        .err())
                .contains("draws");
        assertThat(Cli.run("assumptions").err())
                .startsWith("--out DIR is missing")
                .doesNotContain("\tat ");
    }

    @Test
    void everyCommandShowsAnExample() {
        for (String command : Weatherlap.commandLine().getSubcommands().keySet()) {
            Cli cli = Cli.run(command, "--help");
            assertThat(cli.status()).isZero();
            assertThat(cli.out()).as(command).contains("Example", "weatherlap " + command, "--quiet");
        }
    }
}
