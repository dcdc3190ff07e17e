package weatherlap.reports.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.assumptions.AssumptionTables;

class AssumptionsWorkbookTest {
    @TempDir
    private Path folder;

    private AssumptionTables readBack(AssumptionTables tables) throws Exception {
        Path workbook = folder.resolve("shop.xlsx");
        try (OutputStream out = Files.newOutputStream(workbook)) {
            new AssumptionsWorkbook(tables).content().writeTo(out);
        }
        try (InputWorkbooks workbooks = new InputWorkbooks()) {
            Path unpacked = workbooks.folder(workbook.toString());
            assertThat(workbooks.problems()).isEmpty();
            return AssumptionTables.read(unpacked).orElseThrow();
        }
    }

    /** Every number and word of every row, and the single numbers, which come with the program. */
    @Test
    void assumptionsAreTheSameAfterAWorkbook() throws Exception {
        AssumptionTables bundled = AssumptionTables.bundled();
        AssumptionTables back = readBack(bundled);
        assertThat(back.assumptions()).isEqualTo(bundled.assumptions());
        assertThat(back.texts().keySet()).isEqualTo(bundled.texts().keySet());
        bundled.texts().keySet().stream()
                .filter(file -> AssumptionTables.SCHEMAS.stream()
                        .anyMatch(schema -> schema.file().equals(file)))
                .forEach(file -> assertThat(back.rows(file)).as(file).isEqualTo(bundled.rows(file)));
    }

    @Test
    void aWageThatWasChangedStaysChanged() throws Exception {
        AssumptionTables changed = AssumptionTables.bundled()
                .with(List.of("wage.national.carpenter=31"))
                .orElseThrow();
        assertThat(readBack(changed).assumptions()).isEqualTo(changed.assumptions());
        assertThat(changed.assumptions())
                .isNotEqualTo(AssumptionTables.bundled().assumptions());
    }
}
