package weatherlap.analysis.tables;

import java.util.List;
import java.util.OptionalDouble;
import tech.tablesaw.api.NumericColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.columns.ResultColumn;

/** A table with the catalogue of its columns. */
public record ResultTable(Layout<?> layout, Table table) {
    public ResultTable {
        List<String> names = table.columnNames();
        if (!names.equals(layout.names())) {
            throw new IllegalArgumentException(
                    layout.file() + " must have the columns " + layout.names() + ", not " + names);
        }
    }

    /**
     * Lets each column fill itself.
     *
     * @throws IllegalArgumentException for a cell that is empty, or no finite number, where its column wants one
     */
    public static <R> ResultTable of(Layout<R> layout, List<? extends R> rows) {
        Table table = Table.create(layout.title());
        for (ResultColumn<R> column : layout.columns()) {
            try {
                table.addColumns(column.fill(rows));
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(layout.file() + ": " + e.getMessage(), e);
            }
        }
        return new ResultTable(layout, table);
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
    public OptionalDouble number(int row, ResultColumn<?> column) {
        return number(row, layout.columns().indexOf(column));
    }

    /** The same by the place of the column. */
    public OptionalDouble number(int row, int column) {
        NumericColumn<?> numbers = (NumericColumn<?>) table.column(column);
        return numbers.isMissing(row) ? OptionalDouble.empty() : OptionalDouble.of(numbers.getDouble(row));
    }
}
