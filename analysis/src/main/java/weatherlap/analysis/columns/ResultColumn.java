package weatherlap.analysis.columns;

import java.util.List;
import weatherlap.sim.Check;

/**
 * One column of a result table, which knows what it means and what to take from a row.
 *
 * @param <R> what a row is made from
 * @param name as in CSV headers; ends in the unit where there is one
 * @param title as people read it
 * @param unit such as ft², USD; empty without one
 * @param decimals shown after the point, 0 to 9; 0 for texts
 * @param mayBeEmpty whether a cell may hold nothing
 * @param meaning one line
 */
public record ResultColumn<R>(
        String name, String title, String unit, int decimals, boolean mayBeEmpty, String meaning, Cell<R> cell) {
    /** What a cell holds. */
    public enum Kind {
        /** May have come from a user's table: never to be trusted as a formula or a tag. */
        TEXT,
        WHOLE,
        NUMBER
    }

    public ResultColumn {
        Check.text("column name", name);
        Check.text("column title", title);
        Check.within("decimals", decimals, 0, 9);
        Check.text("meaning of " + name, meaning);
    }

    public Kind kind() {
        return cell.kind();
    }

    /** The title with the unit after it, such as {@code glass lost (ft²)}. */
    public String titleWithUnit() {
        return unit.isEmpty() ? title : title + " (" + unit + ")";
    }

    /** @throws IllegalArgumentException for a cell that is empty, or no finite number, where the column wants one */
    public tech.tablesaw.columns.Column<?> fill(List<? extends R> rows) {
        return cell.fill(this, rows);
    }

    /**
     * Hands the cell of one row over.
     *
     * @param at place of the row, from 0
     * @throws IllegalArgumentException likewise
     */
    public void give(R row, int at, CellTaker taker) {
        cell.give(this, row, at, taker);
    }

    double finite(double number, int row) {
        if (!Double.isFinite(number)) {
            throw wrong(number, row, "finite number");
        }
        return number;
    }

    IllegalArgumentException wrong(Object cell, int row, String wanted) {
        return new IllegalArgumentException(
                "The " + name + " (" + cell + ") of row " + (row + 1) + " must be a " + wanted + ".");
    }
}
