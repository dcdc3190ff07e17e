package weatherlap.reports.format;

import java.io.IOException;
import java.io.OutputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import weatherlap.analysis.columns.CellTaker;
import weatherlap.analysis.columns.ResultColumn;
import weatherlap.analysis.tables.TableCells;
import weatherlap.sim.Each;
import weatherlap.sim.method.Method;

/** The rows of a table, below a header and rows of empty cells, which say how the cells of a column look. */
final class ResultSheet implements CellTaker {
    private static final String ROW_ENDS = "</row>";
    /** A cell, and the style of it. */
    static final Pattern STYLED = Pattern.compile("<c r=\"([A-Z]+\\d+)\"( s=\"\\d+\")");

    private final String[] styles;
    private final int methods;
    private final Map<String, String> tints = new HashMap<>();
    private final SheetRows rows;

    /** @param patterns the rows of empty cells */
    private ResultSheet(String patterns, List<? extends ResultColumn<?>> columns, OutputStream out) {
        Map<String, String> looks = new HashMap<>();
        for (Matcher cell = STYLED.matcher(patterns); cell.find(); ) {
            looks.put(cell.group(1), cell.group(2));
        }
        styles = new String[columns.size()];
        for (int c = 0; c < styles.length; c++) {
            styles[c] = looks.getOrDefault(CellSheet.cell(1, c), "");
        }
        methods = methods(columns);
        for (Method method : Method.values()) {
            tints.put(method.name(), looks.get(CellSheet.cell(tint(method), methods)));
        }
        rows = new SheetRows(out);
    }

    /** The column of methods; below 0 where there is none. */
    static int methods(List<? extends ResultColumn<?>> columns) {
        return Each.of(columns, column -> column.name()).indexOf("method");
    }

    /** The row whose cell among the methods looks as one does. */
    static int tint(Method method) {
        return 1 + method.ordinal();
    }

    /** @param sheet its part, as it is without the rows of the table */
    static Content of(Content sheet, TableCells table) {
        return out -> {
            String frame = sheet.text();
            int header = frame.indexOf(ROW_ENDS) + ROW_ENDS.length();
            int end = frame.indexOf("</sheetData>");
            SheetRows.write(frame.substring(0, header), out);
            new ResultSheet(frame.substring(header, end), table.layout().columns(), out).write(table);
            SheetRows.write(frame.substring(end), out);
        };
    }

    private void write(TableCells table) throws IOException {
        for (int row = 0; row < table.count(); row++) {
            rows.begin(1 + row, "");
            table.give(row, this);
            rows.end();
        }
    }

    /** A method in its colours, as in the pictures. */
    @Override
    public void text(String cell) {
        String text = WorkbookFile.text(cell);
        int column = rows.column();
        rows.text(column == methods ? tints.getOrDefault(text.toUpperCase(Locale.ROOT), "") : styles[column], text);
    }

    @Override
    public void number(double number, int decimals) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("A result (" + number + ") must be a finite number.");
        }
        rows.cell(styles[rows.column()]).append("><v>").append(number).append("</v></c>");
    }

    @Override
    public void nothing() {
        rows.gap();
    }
}
