package weatherlap.reports.workbook;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.assumptions.SettingRows;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Schema;
import weatherlap.datasets.workbook.SheetNames;
import weatherlap.datasets.workbook.WorkbookTables;
import weatherlap.reports.format.Content;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.OutputFile;
import weatherlap.reports.output.OutputRefused;
import weatherlap.reports.output.OutputRequest;

/** What the program assumes about a shop, as one workbook with a sheet for each table, to edit and to name where a folder is named. */
public record AssumptionsWorkbook(AssumptionTables tables) {
    /** Whether an output is named as workbooks are. */
    public static boolean isAskedBy(OutputRequest output) {
        return WorkbookTables.isNamedSo(output.folder());
    }

    /** @throws OutputRefused for another ending than .xlsx */
    public void write(OutputRequest output, Messages messages) {
        WriteTemplate.refuseOtherEnding(output.folder());
        OutputFile.write(output.folder(), content());
        messages.note("the assumption tables are in " + output.folder() + ", single numbers on the sheet "
                + SettingsSheet.NAME + "; edit them, then name the workbook with --assumptions");
    }

    /**
     * The tables of a workbook; where they are assumptions, with the scenario that its settings are, or else that which comes with the
     * program. What is wrong with a setting is reported by its row.
     */
    static WorkbookTables withNumbers(WorkbookTables tables, Problems problems) {
        if (AssumptionTables.SCHEMAS.stream().noneMatch(schema -> tables.texts().containsKey(schema.file()))) {
            return tables;
        }
        String settings = tables.texts().get(SettingRows.SCHEMA.file());
        if (settings == null) {
            return tables.with(
                    AssumptionTables.NUMBERS, AssumptionTables.bundled().texts().get(AssumptionTables.NUMBERS));
        }
        return SettingRows.read(settings, problems)
                .map(rows -> tables.with(AssumptionTables.NUMBERS, rows.toml())
                        .named(AssumptionTables.NUMBERS, cells(tables, rows)))
                .orElse(tables);
    }

    /** The cells in which the values of the settings stand. */
    private static SheetNames.Sheet cells(WorkbookTables tables, SettingRows rows) {
        SheetNames.Sheet sheet = tables.names().sheets().get(SettingRows.SCHEMA.file());
        Map<String, String> cells = new LinkedHashMap<>();
        rows.lines().forEach((name, line) -> cells.put(name, sheet.letters().get("value") + line));
        return new SheetNames.Sheet(sheet.name(), sheet.letters(), sheet.called(), cells);
    }

    /** The workbook itself. */
    Content content() {
        return FillInWorkbook.of((workbook, lists) -> {
            List<Schema> schemas = Stream.concat(AssumptionTables.SCHEMAS.stream(), AssumptionTables.MAY_LACK.stream())
                    .filter(schema -> tables.texts().containsKey(schema.file()))
                    .toList();
            for (Schema schema : schemas) {
                byte[] csv = tables.texts().get(schema.file()).getBytes(StandardCharsets.UTF_8);
                TemplateWorkbook.table(workbook, schema, schema.columns(), csv, lists);
            }
            new SettingsSheet(tables.assumptions().scenario()).write(workbook, lists);
        });
    }
}
