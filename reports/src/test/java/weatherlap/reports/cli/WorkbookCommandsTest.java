package weatherlap.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One workbook wherever a folder of tables goes. */
class WorkbookCommandsTest {
    @TempDir
    private static Path folder;

    private static Path workbook;

    @BeforeAll
    static void template() {
        workbook = folder.resolve("my houses.xlsx");
        Cli cli = Cli.run("generate", "--template", "--records", "--out", workbook);
        assertThat(cli.status()).isZero();
        assertThat(cli.err()).contains("weatherlap check \"" + workbook + "\"");
    }

    @Test
    void everyCommandThatReadsTablesReadsIt() {
        List<List<Object>> lines = List.of(
                List.of("check", workbook),
                List.of("explain", workbook, "--opening", "EXAMPLE/front/W1"),
                List.of("compare", workbook, "--draws", 16, "--out", folder.resolve("report")),
                List.of("handout", workbook, "--out", folder.resolve("handout")),
                List.of("crewsheet", workbook, "--method", "insert", "--out", folder.resolve("crew")),
                List.of("callbacks", workbook, "--out", folder.resolve("calls")),
                List.of("calibrate", workbook, "--out", folder.resolve("rates")));
        for (List<Object> line : lines) {
            Cli cli = Cli.run(line.toArray());
            assertThat(cli.err()).as(line + "").doesNotContain("weatherlap1", "weatherlap2", ".csv:");
            assertThat(cli.status()).as(line + cli.err()).isZero();
        }
        assertThat(folder.resolve("report/report.html")).content().contains("my houses");
    }

    @Test
    void aWorkbookIsNeverWrittenOver() {
        Cli again = Cli.run("generate", "--template", "--force", "--out", workbook);
        assertThat(again.status()).isEqualTo(2);
        assertThat(again.err()).contains("may hold your work");
        Cli out = Cli.run("compare", "--draws", 16, "--force", "--out", workbook);
        assertThat(out.status()).isEqualTo(2);
        assertThat(Cli.run("check", workbook).status()).isZero();
    }

    /** Nothing of the tables stays behind, whether the run ends well or not. */
    @Test
    void whatWasUnpackedIsGone() throws IOException {
        Path other = Files.writeString(folder.resolve("other.xlsx"), "house_id\n");
        List<Path> before = temporary();
        assertThat(Cli.run("check", workbook).status()).isZero();
        Cli bad = Cli.run("check", other);
        assertThat(bad.status()).isEqualTo(2);
        assertThat(bad.err()).isEqualTo("other.xlsx: is not a workbook; save it as .xlsx\n");
        assertThat(Cli.run("explain", workbook, "--opening", "none").status()).isEqualTo(2);
        assertThat(temporary()).containsAll(before).hasSameSizeAs(before);
    }

    private static List<Path> temporary() throws IOException {
        try (Stream<Path> files = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            return files.filter(file -> Files.exists(file.resolve("my houses"))).toList();
        }
    }
}
