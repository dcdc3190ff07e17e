package weatherlap.analysis.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import weatherlap.analysis.columns.Column;
import weatherlap.analysis.columns.Schema;

/** Fills the table of a schema, row by row. */
public final class TableBuilder {
    private final Schema schema;
    private final List<tech.tablesaw.columns.Column<?>> columns = new ArrayList<>();
    private int rows;

    public TableBuilder(Schema schema) {
        this.schema = schema;
        for (Column column : schema.columns()) {
            columns.add(
                    switch (column.kind()) {
                        case TEXT -> StringColumn.create(column.name());
                        case WHOLE -> IntColumn.create(column.name());
                        case NUMBER -> DoubleColumn.create(column.name());
                    });
        }
    }

    /**
     * Adds a row.
     *
     * @param cells texts, whole numbers, doubles, or optional doubles, in the order of the columns
     * @throws IllegalArgumentException for a cell that is missing, or no finite number, where the schema wants one
     */
    public TableBuilder row(Object... cells) {
        if (cells.length != columns.size()) {
            throw new IllegalArgumentException(
                    schema.file() + " has " + columns.size() + " columns, not " + cells.length + ".");
        }
        for (int i = 0; i < cells.length; i++) {
            append(schema.columns().get(i), columns.get(i), cells[i]);
        }
        rows++;
        return this;
    }

    public ResultTable build() {
        Table table = Table.create(schema.title(), columns.toArray(new tech.tablesaw.columns.Column<?>[0]));
        return new ResultTable(schema, table);
    }

    private void append(Column column, tech.tablesaw.columns.Column<?> target, Object cell) {
        if (target instanceof StringColumn texts
                && cell instanceof String text
                && (column.mayBeEmpty() || !text.isEmpty())) {
            texts.append(text);
        } else if (target instanceof IntColumn wholes && cell instanceof Integer whole) {
            wholes.append(whole);
        } else if (target instanceof DoubleColumn numbers && cell instanceof Double number && Double.isFinite(number)) {
            numbers.append(number);
        } else if (target instanceof DoubleColumn numbers
                && cell instanceof OptionalDouble number
                && column.mayBeEmpty()) {
            append(numbers, column, number);
        } else {
            throw wrong(column, cell);
        }
    }

    private void append(DoubleColumn numbers, Column column, OptionalDouble number) {
        if (number.isPresent() && !Double.isFinite(number.getAsDouble())) {
            throw wrong(column, number);
        }
        if (number.isPresent()) {
            numbers.append(number.getAsDouble());
        } else {
            numbers.appendMissing();
        }
    }

    private IllegalArgumentException wrong(Column column, Object cell) {
        return new IllegalArgumentException("The " + column.name() + " (" + cell + ") of row " + (rows + 1) + " of "
                + schema.file() + " must be a "
                + switch (column.kind()) {
                    case TEXT -> "text that is not empty.";
                    case WHOLE -> "whole number.";
                    case NUMBER -> "finite number.";
                });
    }
}
