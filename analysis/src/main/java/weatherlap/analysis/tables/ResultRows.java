package weatherlap.analysis.tables;

import java.util.List;
import weatherlap.analysis.columns.Layout;

/**
 * What the rows of a table are made from, with the catalogue of its columns.
 *
 * @param <R> what a row is made from
 */
public record ResultRows<R>(Layout<R> layout, List<R> rows) {
    public ResultRows {
        rows = List.copyOf(rows);
    }

    /** @throws IllegalArgumentException for a cell that is empty, or no finite number, where its column wants one */
    public ResultTable table() {
        return ResultTable.of(layout, rows);
    }
}
