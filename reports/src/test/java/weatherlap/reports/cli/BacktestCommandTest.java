package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.InputSource;

class BacktestCommandTest {
    @TempDir
    private static Path folder;

    private static Path made;
    private static Path out;
    private static Cli run;

    /** Twenty-four jobs of a made-up shop, their records in one workbook. */
    @BeforeAll
    static void foresee() throws IOException {
        made = folder.resolve("made");
        assertThat(Cli.run("generate", "--houses", 1, "--jobs", 24, "--seed", 3, "--out", made)
                        .status())
                .isZero();
        Path records = PlainWorkbook.write(made, folder.resolve("kept.xlsx"));
        out = folder.resolve("foreseen");
        run = Cli.run("backtest", made, "--jobs", records, "--callbacks", records, "--out", out);
    }

    @Test
    void thePageNamesTheWorkbookAndItsSheets() {
        assertThat(out.resolve("backtest.html"))
                .content()
                .contains(
                        "kept.xlsx, sheet Jobs",
                        "kept.xlsx, sheet Items, as job-items.csv",
                        "kept.xlsx, sheet Callbacks, as callbacks.csv")
                .doesNotContain("jobs/");
    }

    @Test
    void writesWhatItPromises() throws IOException {
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(out.toFile().list())
                .containsExactlyInAnyOrder(
                        "backtest-jobs.csv",
                        "backtest-scores.csv",
                        "backtest-segments.csv",
                        "backtest-curves.csv",
                        "backtest.html",
                        "backtest.pdf",
                        "summary.json",
                        "charts",
                        "columns.json",
                        "run.json");
        assertThat(Files.readAllLines(out.resolve("backtest-scores.csv"))).hasSize(1 + 5 * 3);
        JsonNode hours = new ObjectMapper()
                .readTree(out.resolve("summary.json").toFile())
                .at("/amounts/hours/calibrated");
        assertThat(hours.get("jobs").asInt()).isEqualTo(24);
        assertThat(hours.get("score").asDouble()).isPositive();
        assertThat(hours.get("against_average").asText()).isIn("better", "worse", "neither");
    }

    /** Whatever the verdict is, it stands first. */
    @Test
    void saysWhetherItBeatsAPlainAverage() {
        assertThat(run.out()).startsWith("The calibrated tables: ").contains("The tables as they are: ", "average");
        String first = run.out().lines().findFirst().orElseThrow();
        assertThat(run.out().contains("a plain average per window predicts these jobs better"))
                .isEqualTo(first.contains("worse than the average for"));
    }

    @Test
    void thePageIsWholeAndFetchesNothing() throws Exception {
        String page = Files.readString(out.resolve("backtest.html"));
        assertThat(page)
                .contains("Against a plain average", "Did the bands keep their word?", "Bias by kind of job", "SHA-256")
                .doesNotContainPattern("(?i)(src|href)=\"(https?:|//|file:)");
        assertThat(DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new InputSource(new StringReader(page.replaceFirst("<!DOCTYPE html>", ""))))
                        .getElementsByTagName("svg")
                        .getLength())
                .isEqualTo(1);
    }

    @Test
    void tooFewJobsAreRefusedAndNothingIsWritten() throws IOException {
        List<String> rows = Files.readAllLines(made.resolve("jobs.csv"));
        Path few = folder.resolve("few.csv");
        Files.writeString(few, String.join("\n", rows.subList(0, 12)) + "\n");
        Cli refused = Cli.run("backtest", made, "--jobs", few, "--out", folder.resolve("none"));
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains("few.csv: holds 11 jobs; 12 or more are needed");
        assertThat(folder.resolve("none")).doesNotExist();
    }
}
