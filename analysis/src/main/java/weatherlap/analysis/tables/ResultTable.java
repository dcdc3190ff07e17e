package weatherlap.analysis.tables;

import java.util.List;
import java.util.OptionalDouble;
import tech.tablesaw.api.NumericColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import weatherlap.analysis.columns.Column;
import weatherlap.analysis.columns.Schema;

/** A table with the catalogue of its columns. */
public record ResultTable(Schema schema, Table table) {
    public ResultTable {
        List<String> names = table.columnNames();
        if (!names.equals(schema.names())) {
            throw new IllegalArgumentException(
                    schema.file() + " must have the columns " + schema.names() + ", not " + names);
        }
    }

    public int rows() {
        return table.rowCount();
    }

    /** A text cell; empty where there is nothing. */
    public String text(int row, String column) {
        return table.stringColumn(column).get(row);
    }

    /** The same by the place of the column. */
    public String text(int row, int column) {
        return ((StringColumn) table.column(column)).get(row);
    }

    /** A number; empty where there is none. */
    public OptionalDouble number(int row, Column column) {
        return number(row, schema.columns().indexOf(column));
    }

    /** The same by the place of the column. */
    public OptionalDouble number(int row, int column) {
        NumericColumn<?> numbers = (NumericColumn<?>) table.column(column);
        return numbers.isMissing(row) ? OptionalDouble.empty() : OptionalDouble.of(numbers.getDouble(row));
    }
}
