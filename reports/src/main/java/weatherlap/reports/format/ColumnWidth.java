package weatherlap.reports.format;

import weatherlap.analysis.columns.CellTaker;
import weatherlap.analysis.columns.ResultColumn;
import weatherlap.analysis.tables.TableCells;

/** How wide a column of a table wants to be: as the longest of its texts, within bounds. */
final class ColumnWidth implements CellTaker {
    private static final double NARROWEST = 10;
    private static final double WIDEST = 60;
    private static final double CHARACTER = 1.1;

    private int longest;

    private ColumnWidth() {}

    /** In characters. */
    static double of(TableCells table, int column) {
        ResultColumn<?> heading = table.layout().columns().get(column);
        ColumnWidth width = new ColumnWidth();
        width.text(heading.titleWithUnit());
        if (heading.kind() == ResultColumn.Kind.TEXT) {
            for (int row = 0; row < table.count() && width.characters() < WIDEST; row++) {
                table.give(row, column, width);
            }
        }
        return Math.min(WIDEST, Math.max(NARROWEST, width.characters()));
    }

    private double characters() {
        return longest * CHARACTER;
    }

    @Override
    public void text(String text) {
        longest = Math.max(longest, text.length());
    }

    @Override
    public void number(double number, int decimals) {
        throw new IllegalStateException("a number is no text");
    }

    @Override
    public void nothing() {
        throw new IllegalStateException("a text may be empty, and is one");
    }
}
