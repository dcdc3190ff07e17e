package weatherlap.datasets.assumptions;

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
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Material;
import weatherlap.sim.assumptions.UnitPrice;
import weatherlap.sim.assumptions.Wage;
import weatherlap.sim.explain.Origin;

/** Writes a table with other numbers; everything else of each row stays as it is. */
final class RowText {
    private RowText() {}

    /** {@code labour-steps.csv} with minutes, basis and source of the given steps. */
    static String withSteps(String text, List<LabourStep> steps) {
        Map<String, LabourStep> byId = steps.stream().collect(Collectors.toMap(LabourStep::id, Function.identity()));
        return replace(text, AssumptionSchemas.LABOUR_STEPS, row -> {
            LabourStep step = byId.get(row.text("step_id"));
            return Map.of(
                    "low_minutes", CsvText.cell(step.minutes().low()),
                    "likely_minutes", CsvText.cell(step.minutes().likely()),
                    "high_minutes", CsvText.cell(step.minutes().high()),
                    "basis", basis(step.origin()),
                    "source", step.origin().source());
        });
    }

    /** {@code wages.csv} with pay, burden, basis and source of the given wages. */
    static String withWages(String text, List<Wage> wages) {
        Map<List<String>, Wage> byKey = wages.stream()
                .collect(Collectors.toMap(wage -> List.of(wage.region(), wage.role()), Function.identity()));
        return replace(text, AssumptionSchemas.WAGES, row -> {
            Wage wage = byKey.get(List.of(row.text("region"), row.text("role")));
            return Map.of(
                    "usd_per_hour", CsvText.cell(wage.usdPerHour()),
                    "burden_fraction", CsvText.cell(wage.burdenFraction()),
                    "basis", basis(wage.origin()),
                    "source", wage.origin().source());
        });
    }

    /** {@code lap-faults.csv} with admitted shares, basis and source of the given faults. */
    static String withFaults(String text, List<LapFault> faults) {
        Map<String, LapFault> byId = faults.stream().collect(Collectors.toMap(LapFault::id, Function.identity()));
        return replace(text, AssumptionSchemas.LAP_FAULTS, row -> {
            LapFault fault = byId.get(row.text("fault_id"));
            return Map.of(
                    "admitted_low", CsvText.cell(fault.admitted().low()),
                    "admitted_likely", CsvText.cell(fault.admitted().likely()),
                    "admitted_high", CsvText.cell(fault.admitted().high()),
                    "basis", basis(fault.origin()),
                    "source", fault.origin().source());
        });
    }

    /** {@code materials.csv} with waste, prices, basis and source of the given items. */
    static String withMaterials(String text, List<Material> items) {
        Map<String, Material> byId = items.stream().collect(Collectors.toMap(Material::id, Function.identity()));
        return replace(text, AssumptionSchemas.MATERIALS, row -> {
            Material item = byId.get(row.text("item_id"));
            return Map.of(
                    "waste_fraction", CsvText.cell(item.wasteFraction()),
                    "price_low", CsvText.cell(item.price().low()),
                    "price_likely", CsvText.cell(item.price().likely()),
                    "price_high", CsvText.cell(item.price().high()),
                    "basis", basis(item.origin()),
                    "source", item.origin().source());
        });
    }

    /** {@code units.csv} with prices, basis and source of the given rows. */
    static String withUnitPrices(String text, List<UnitPrice> prices) {
        Map<List<String>, UnitPrice> byKey = prices.stream()
                .collect(Collectors.toMap(
                        price -> List.of(CsvText.cell(price.method()), CsvText.cell(price.operation())),
                        Function.identity()));
        return replace(text, AssumptionSchemas.UNITS, row -> {
            UnitPrice price = byKey.get(List.of(row.text("method"), row.text("operation")));
            return Map.of(
                    "base_usd", CsvText.cell(price.baseUsd()),
                    "usd_per_united_inch", CsvText.cell(price.usdPerUnitedInch()),
                    "basis", basis(price.origin()),
                    "source", price.origin().source());
        });
    }

    private static String basis(Origin origin) {
        return origin.basis().word();
    }

    /** A table with other cells, by column, in each of its rows. */
    static String replace(String text, Schema schema, Function<Row, Map<String, String>> changed) {
        TextTable table = TextTable.read(Source.of(schema.file(), text), schema, new Problems())
                .orElseThrow();
        return CsvText.line(schema.names())
                + table.rows()
                        .map(row -> {
                            Map<String, String> cells = changed.apply(row);
                            return CsvText.line(schema.names().stream()
                                    .map(name -> cells.getOrDefault(name, row.text(name)))
                                    .toList());
                        })
                        .collect(Collectors.joining());
    }
}
