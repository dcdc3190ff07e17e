package weatherlap.reports.workbook;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.dhatim.fastexcel.Workbook;
import weatherlap.datasets.shortform.ShortTable;
import weatherlap.datasets.table.Column;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Source;
import weatherlap.datasets.table.TextTable;
import weatherlap.datasets.workbook.WorkbookTables;
import weatherlap.reports.format.Content;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.NextCommand;
import weatherlap.reports.output.OutputFile;
import weatherlap.reports.output.OutputFolder;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.output.RunRecord;
import weatherlap.reports.output.Version;

/** Writes the short table to fill in, with one made-up house and notes: a workbook, or a folder of the table as CSV. */
public record WriteShortTemplate(OutputRequest output) {
    private static final String NOTES = "short-notes.txt";
    private static final List<List<String>> EXAMPLE = List.of(
            List.of("EXAMPLE", "S", "1", "35.5", "59.5", "double_hung", "aluminum", "vinyl_siding"),
            List.of("EXAMPLE", "S", "2", "30", "48", "double_hung", "aluminum", "vinyl_siding"),
            List.of("EXAMPLE", "W", "3", "60", "36", "slider", "aluminum", "vinyl_siding"));

    public void run(Messages messages) throws IOException {
        if (WorkbookTables.isNamedSo(output.folder())) {
            WriteTemplate.refuseOtherEnding(output.folder());
            OutputFile.write(output.folder(), FillInWorkbook.of(WriteShortTemplate::sheets));
        } else {
            try (OutputFolder folder = output.open(List.of())) {
                folder.write(ShortTable.FILE, Content.of(csv()));
                folder.write("NOTES.txt", Content.of(TemplateWorkbook.text(NOTES)));
                folder.write("columns.csv", Content.of(WriteTemplate.columns(List.of(ShortTable.SCHEMA))));
                folder.commit(new RunRecord(
                        Version.current(), "generate", Map.of("template", true, "short", true), new TreeMap<>()));
            }
        }
        messages.note("a table of eight columns with an example house is in " + output.folder()
                + "; its notes say how to put your windows in its place");
        messages.note("next: " + NextCommand.command("check", output.folder()));
    }

    private static String csv() {
        StringBuilder csv = new StringBuilder(
                CsvText.line(ShortTable.EIGHT.stream().map(Column::name).toList()));
        EXAMPLE.forEach(row -> csv.append(CsvText.line(row)));
        return csv.toString();
    }

    private static void sheets(Workbook workbook, WordLists lists) throws IOException {
        List<Row> rows = TextTable.read(Source.of(ShortTable.FILE, csv()), ShortTable.SCHEMA, new Problems())
                .orElseThrow()
                .rows()
                .toList();
        new TableSheet(ShortTable.SCHEMA, ShortTable.SCHEMA.columns()).write(workbook, "Windows", rows, lists);
        TemplateWorkbook.notes(workbook.newWorksheet("Read me"), NOTES);
    }
}
