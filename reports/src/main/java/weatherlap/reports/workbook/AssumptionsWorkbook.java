package weatherlap.reports.workbook;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.datasets.table.Schema;
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

    /** @throws OutputRefused for another ending than .xlsx, and for single numbers that were changed: no sheet holds those */
    public void write(OutputRequest output, Messages messages) {
        if (!output.folder().toString().endsWith(".xlsx")) {
            throw new OutputRefused(output.folder() + ": the name of a workbook must end in .xlsx");
        }
        String numbers = AssumptionTables.NUMBERS;
        if (!tables.texts()
                .get(numbers)
                .equals(AssumptionTables.bundled().texts().get(numbers))) {
            throw new OutputRefused(output.folder() + ": a workbook holds the tables and not the single numbers of "
                    + numbers + "; write a folder, or change them where you use it: --set NAME=VALUE");
        }
        OutputFile.write(output.folder(), content());
        messages.note("the assumption tables are in " + output.folder()
                + "; edit them, then name it with --assumptions; change single numbers with --set");
    }

    /** The tables of a workbook; where they are assumptions, with the single numbers that come with the program, since no sheet holds any. */
    static Map<String, String> withNumbers(Map<String, String> texts) {
        if (AssumptionTables.SCHEMAS.stream().noneMatch(schema -> texts.containsKey(schema.file()))) {
            return texts;
        }
        Map<String, String> all = new LinkedHashMap<>(texts);
        all.put(AssumptionTables.NUMBERS, AssumptionTables.bundled().texts().get(AssumptionTables.NUMBERS));
        return all;
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
        });
    }
}
