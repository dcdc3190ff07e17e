package weatherlap.reports.workbook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import weatherlap.charts.kit.Tone;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.jobs.CallSchema;
import weatherlap.datasets.jobs.JobSchema;
import weatherlap.datasets.jobs.TemplateJobs;
import weatherlap.datasets.portfolio.PortfolioTables;
import weatherlap.datasets.portfolio.TemplatePortfolio;
import weatherlap.datasets.table.Column;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Schema;
import weatherlap.datasets.table.Source;
import weatherlap.datasets.table.TextTable;
import weatherlap.datasets.workbook.SheetTable;
import weatherlap.reports.format.Content;

/** The workbook to fill in: houses, walls and windows, on request jobs and service calls, with one made-up house, and notes. */
public final class TemplateWorkbook {
    private static final String JOBS = "jobs.csv";
    private static final String NOTES = "template-notes.txt";

    private TemplateWorkbook() {}

    /** @param records whether jobs and service calls have sheets too */
    public static Content of(boolean records) {
        return FillInWorkbook.of((workbook, lists) -> {
            notes(workbook.newWorksheet("Read me"), NOTES);
            for (Schema schema : PortfolioTables.ALL) {
                table(workbook, schema, schema.columns(), TemplatePortfolio.bytes(schema.file()), lists);
            }
            if (records) {
                Schema jobs = JobSchema.of(JOBS, AssumptionTables.bundled().assumptions());
                byte[] example = TemplateJobs.bytes(JOBS);
                List<String> kept = List.of(new String(example, StandardCharsets.UTF_8)
                        .lines()
                        .findFirst()
                        .orElseThrow()
                        .split(","));
                List<Column> columns = jobs.columns().stream()
                        .filter(column -> kept.contains(column.name()))
                        .toList();
                table(workbook, jobs, columns, example, lists);
                Schema calls = CallSchema.CALLBACKS;
                table(workbook, calls, calls.columns(), TemplateJobs.bytes(CallSchema.FILE), lists);
            }
        });
    }

    /** A sheet of a table as it stands in CSV. */
    static void table(Workbook workbook, Schema schema, List<Column> columns, byte[] csv, WordLists lists)
            throws IOException {
        List<Row> rows = TextTable.read(
                        Source.of(schema.file(), new String(csv, StandardCharsets.UTF_8)), schema, new Problems())
                .map(read -> read.rows().toList())
                .orElse(List.of());
        String name = SheetTable.ALL.stream()
                .filter(table -> table.file().equals(schema.file()))
                .map(SheetTable::sheet)
                .findFirst()
                .orElseThrow();
        new TableSheet(schema, columns).write(workbook, name, rows, lists);
    }

    static void notes(Worksheet sheet, String file) throws IOException {
        int row = 0;
        for (String line : text(file).split("\n", -1)) {
            sheet.value(row++, 0, line);
        }
        sheet.style(0, 0).bold().fontSize(14).fontColor(Tone.INK.rgb()).set();
        sheet.width(0, 110);
        sheet.finish();
    }

    static String text(String file) throws IOException {
        try (var in = TemplateWorkbook.class.getResourceAsStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
        }
    }
}
