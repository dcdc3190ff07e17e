package weatherlap.analysis.drivers;

import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.sensitivity.SobolIndices.Index;
import weatherlap.analysis.tables.ResultTable;

/** {@code drivers.csv}. */
public final class DriverTable {
    public static final Layout<DriverRow> LAYOUT = Layout.<DriverRow>of(
                    "drivers.csv", "Drivers", "One assumption and outcome.")
            .text(
                    "assumption",
                    "assumption",
                    "name of a setting or a choice, a table, table and row, or table and group of rows",
                    DriverRow::assumption)
            .text("outcome", "outcome", "cost_difference or risk_difference", row -> row.outcome()
                    .key())
            .optionalNumber(
                    "first_order",
                    "first order",
                    "fraction",
                    4,
                    "Sobol' index: share of the variance that knowing it alone removes; empty: not asked by itself",
                    row -> index(row, index -> index.firstOrder().value()))
            .optionalNumber(
                    "first_order_error",
                    "error",
                    "fraction",
                    4,
                    "standard error of it",
                    row -> index(row, index -> index.firstOrder().error()))
            .optionalNumber(
                    "total",
                    "total",
                    "fraction",
                    4,
                    "Sobol' index with all interactions",
                    row -> index(row, index -> index.total().value()))
            .optionalNumber(
                    "total_error",
                    "error",
                    "fraction",
                    4,
                    "standard error of it",
                    row -> index(row, index -> index.total().error()))
            .number(
                    "swing_low",
                    "low",
                    "of the outcome",
                    4,
                    "outcome with the assumption at its 10% point, the rest at their medians; of a choice the least over its words",
                    row -> row.swing().low())
            .number(
                    "swing_high",
                    "high",
                    "of the outcome",
                    4,
                    "the same at its 90% point; of a choice the greatest",
                    row -> row.swing().high())
            .optionalNumber(
                    "value_of_information_usd",
                    "worth of knowing",
                    "USD",
                    2,
                    "what knowing it would save, at most, a house",
                    DriverTable::worth)
            .optionalText(
                    "low_value",
                    "low at",
                    "value at swing_low; of a choice the word; empty: of several rows",
                    DriverRow::lowValue)
            .optionalText("high_value", "high at", "the same at swing_high", DriverRow::highValue)
            .build();

    private DriverTable() {}

    public static ResultTable of(DriverStudy study) {
        return ResultTable.of(LAYOUT, study.rows());
    }

    private static OptionalDouble worth(DriverRow row) {
        return row.worth().stream().mapToDouble(worth -> worth.value()).findFirst();
    }

    private static OptionalDouble index(DriverRow row, ToDoubleFunction<Index> part) {
        return row.indices().stream().mapToDouble(part).findFirst();
    }
}
