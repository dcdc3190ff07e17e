package weatherlap.datasets.assumptions;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Schema;
import weatherlap.datasets.table.Source;
import weatherlap.datasets.table.TextTable;
import weatherlap.sim.assumptions.LabourStep;

/** Writes {@code labour-steps.csv} with other minutes. */
final class StepText {
    private StepText() {}

    /** The table with minutes, basis and source of the given steps; everything else of each row stays as it is. */
    static String replace(String text, List<LabourStep> steps) {
        Schema schema = AssumptionSchemas.LABOUR_STEPS;
        Map<String, LabourStep> byId = steps.stream().collect(Collectors.toMap(LabourStep::id, Function.identity()));
        TextTable table = TextTable.read(Source.of(schema.file(), text), schema, new Problems())
                .orElseThrow();
        return CsvText.line(schema.names())
                + table.rows()
                        .map(row -> CsvText.line(cells(schema, row, byId.get(row.text("step_id")))))
                        .collect(Collectors.joining());
    }

    private static List<String> cells(Schema schema, Row row, LabourStep step) {
        Map<String, String> changed = Map.of(
                "low_minutes", CsvText.cell(step.minutes().low()),
                "likely_minutes", CsvText.cell(step.minutes().likely()),
                "high_minutes", CsvText.cell(step.minutes().high()),
                "basis", AssumptionSchemas.BASES.get(step.origin().basis().ordinal()),
                "source", step.origin().source());
        List<String> cells = new ArrayList<>();
        schema.names().forEach(name -> cells.add(changed.getOrDefault(name, row.text(name))));
        return cells;
    }
}
