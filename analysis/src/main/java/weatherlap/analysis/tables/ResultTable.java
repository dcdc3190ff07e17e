package weatherlap.analysis.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import tech.tablesaw.api.NumericColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;
import weatherlap.analysis.columns.CellTaker;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.columns.ResultColumn;

/** A table with the catalogue of its columns. */
public record ResultTable(Layout<?> layout, List<Column<?>> columns) implements TableCells {
    public ResultTable {
        columns = List.copyOf(columns);
        List<String> names = columns.stream().map(Column::name).toList();
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
        List<Column<?>> columns = new ArrayList<>();
        for (ResultColumn<R> column : layout.columns()) {
            try {
                columns.add(column.fill(rows));
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(layout.file() + ": " + e.getMessage(), e);
            }
        }
        return new ResultTable(layout, columns);
    }

    /** To sort, join and draw. Not kept from the start: Tablesaw's own first table takes it a tenth of a short run. */
    public Table table() {
        return Table.create(layout.title(), columns);
    }

    public int rows() {
        return columns.isEmpty() ? 0 : columns.get(0).size();
    }

    /** A text cell; empty where there is nothing. */
    public String text(int row, String column) {
        return text(row, layout.names().indexOf(column));
    }

    /** The same by the place of the column. */
    public String text(int row, int column) {
        return ((StringColumn) columns.get(column)).get(row);
    }

    /** A number; empty where there is none. */
    public OptionalDouble number(int row, ResultColumn<?> column) {
        return number(row, layout.columns().indexOf(column));
    }

    /** The same by the place of the column. */
    public OptionalDouble number(int row, int column) {
        NumericColumn<?> numbers = (NumericColumn<?>) columns.get(column);
        return numbers.isMissing(row) ? OptionalDouble.empty() : OptionalDouble.of(numbers.getDouble(row));
    }

    @Override
    public int count() {
        return rows();
    }

    @Override
    public void give(int row, CellTaker taker) {
        for (int c = 0; c < columns.size(); c++) {
            give(row, c, taker);
        }
    }

    @Override
    public void give(int row, int column, CellTaker taker) {
        ResultColumn<?> shown = layout.columns().get(column);
        if (shown.kind() == ResultColumn.Kind.TEXT) {
            taker.text(text(row, column));
        } else {
            number(row, column).ifPresentOrElse(number -> taker.number(number, shown.decimals()), taker::nothing);
        }
    }
}
