package weatherlap.reports.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.reports.handout.HandoutFiles;
import weatherlap.reports.jobs.Compare;
import weatherlap.reports.output.OutputRequest;

/** The workbook opens in an office program as it is: every sheet, with the rows of the tables beside it. */
class WorkbookOfficeTest {
    @TempDir
    Path folder;

    @Test
    void everySheetOpensWithItsRows() throws Exception {
        Path office = Tools.office();
        Path out = folder.resolve("report");
        new Compare(HandoutFiles.hostile(folder.resolve("in")), new OutputRequest(out, false), 1)
                .run(HandoutFiles.SILENT);
        Path sheets = Files.createDirectory(folder.resolve("sheets"));
        // comma, double quote, UTF-8; the last -1 writes every sheet to a file of its own
        Tools.convert(
                office,
                folder,
                "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1",
                sheets,
                List.of(out.resolve("workbook.xlsx")));

        for (String table : List.of("openings", "elevations", "houses")) {
            try (Stream<Path> files = Files.list(sheets)) {
                Path sheet = files.filter(
                                file -> file.getFileName().toString().equalsIgnoreCase("workbook-" + table + ".csv"))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError("no sheet of " + table));
                assertThat(rows(sheet)).as(table).isGreaterThanOrEqualTo(rows(out.resolve(table + ".csv")));
            }
        }
    }

    private static long rows(Path csv) throws Exception {
        try (Stream<String> lines = Files.lines(csv)) {
            return lines.filter(line -> !line.isBlank()).count();
        }
    }
}
