package weatherlap.analysis.tables;

import java.util.List;
import java.util.OptionalDouble;
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

    /** A number; empty where there is none. */
    public OptionalDouble number(int row, Column column) {
        if (table.column(column.name()).isMissing(row)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                column.kind() == Column.Kind.WHOLE
                        ? table.intColumn(column.name()).getInt(row)
                        : table.doubleColumn(column.name()).getDouble(row));
    }
}
