package weatherlap.analysis.tables;

import java.util.List;
import weatherlap.analysis.columns.CellTaker;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.columns.ResultColumn;

/**
 * What the rows of a table are made from, with the catalogue of its columns.
 *
 * @param <R> what a row is made from
 */
public record ResultRows<R>(Layout<R> layout, List<R> rows) implements TableCells {
    public ResultRows {
        rows = List.copyOf(rows);
    }

    /** @throws IllegalArgumentException for a cell that is empty, or no finite number, where its column wants one */
    public ResultTable table() {
        return ResultTable.of(layout, rows);
    }

    @Override
    public int count() {
        return rows.size();
    }

    @Override
    public void give(int row, CellTaker taker) {
        R made = rows.get(row);
        List<ResultColumn<R>> columns = layout.columns();
        int count = columns.size();
        for (int column = 0; column < count; column++) {
            columns.get(column).give(made, row, taker);
        }
    }

    @Override
    public void give(int row, int column, CellTaker taker) {
        layout.columns().get(column).give(rows.get(row), row, taker);
    }
}
