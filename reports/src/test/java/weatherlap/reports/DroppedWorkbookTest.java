package weatherlap.reports;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DroppedWorkbookTest {
    @TempDir
    private Path folder;

    @Test
    void aWorkbookAloneGetsItsReportBesideIt() throws IOException {
        Path book = Files.createFile(folder.resolve("My houses.XLSX"));
        assertThat(DroppedWorkbook.in(new String[] {book.toString()})
                        .orElseThrow()
                        .command())
                .containsExactly(
                        "compare",
                        book.toString(),
                        "--out",
                        folder.resolve("My houses-report").toString(),
                        "--force");
    }

    @Test
    void nothingElseIsTakenForOne() throws IOException {
        String book = Files.createFile(folder.resolve("a.xlsx")).toString();
        String table = Files.createFile(folder.resolve("a.csv")).toString();
        String missing = folder.resolve("b.xlsx").toString();
        String directory = Files.createDirectory(folder.resolve("c.xlsx")).toString();
        for (List<String> words : List.of(
                List.<String>of(), List.of(table), List.of(missing), List.of(directory), List.of("check", book))) {
            assertThat(DroppedWorkbook.in(words.toArray(String[]::new)))
                    .as("%s", words)
                    .isEmpty();
        }
    }

    @Test
    void nothingOpensWithoutAScreen() {
        assertThat(DroppedWorkbook.opener("Linux", Map.of())).isEmpty();
        assertThat(DroppedWorkbook.opener("Linux", Map.of("DISPLAY", ":0"))).contains(List.of("xdg-open", "{}"));
        assertThat(DroppedWorkbook.opener("Windows 11", Map.of()).orElseThrow()).contains("{}");
        assertThat(DroppedWorkbook.opener("Mac OS X", Map.of())).contains(List.of("open", "{}"));
    }
}
