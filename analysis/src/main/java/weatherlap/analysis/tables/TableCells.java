package weatherlap.analysis.tables;

import weatherlap.analysis.columns.CellTaker;
import weatherlap.analysis.columns.Layout;

/** A table as it is written: the catalogue of its columns, and its cells row by row. */
public sealed interface TableCells permits ResultRows, ResultTable {
    Layout<?> layout();

    /** How many rows. */
    int count();

    /**
     * Hands the cells of a row over, in the order of the columns.
     *
     * @throws IllegalArgumentException for a cell that is empty, or no finite number, where its column wants one
     */
    void give(int row, CellTaker taker);

    /** Hands one cell of a row over, of a column counted from 0; else likewise. */
    void give(int row, int column, CellTaker taker);
}
