package weatherlap.reports.format;

import weatherlap.analysis.columns.CellTaker;
import weatherlap.analysis.columns.ResultColumn;
import weatherlap.analysis.tables.TableCells;

/** How wide the columns of a table want to be: as the longest of their texts. */
final class ColumnWidths implements CellTaker {
    private static final double NARROWEST = 10;
    private static final double CHARACTER = 1.1;

    private final double[] widths;
    private int column;

    private ColumnWidths(int columns) {
        widths = new double[columns];
    }

    /** In characters. */
    static double[] of(TableCells table) {
        ColumnWidths columns = new ColumnWidths(table.layout().columns().size());
        for (ResultColumn<?> column : table.layout().columns()) {
            columns.text(column.titleWithUnit());
        }
        for (int row = 0; row < table.count(); row++) {
            columns.column = 0;
            table.give(row, columns);
        }
        return columns.widths;
    }

    @Override
    public void text(String text) {
        widths[column] = Math.max(widths[column], Math.max(NARROWEST, text.length() * CHARACTER));
        column++;
    }

    @Override
    public void number(double number, int decimals) {
        column++;
    }

    @Override
    public void nothing() {
        column++;
    }
}
