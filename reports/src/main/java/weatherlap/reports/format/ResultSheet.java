package weatherlap.reports.format;

import java.util.Arrays;
import java.util.List;
import org.dhatim.fastexcel.Worksheet;
import weatherlap.analysis.columns.CellTaker;
import weatherlap.analysis.columns.ResultColumn;
import weatherlap.charts.kit.MethodStyle;
import weatherlap.sim.method.Method;

/** Puts the cells of a table into the rows of a sheet below its first. */
final class ResultSheet implements CellTaker {
    private static final double NARROWEST = 10;
    private static final double CHARACTER = 1.1;

    /** That each column wants, in characters. */
    final double[] widths;

    private final Worksheet sheet;
    private final int methods;
    private int row = 1;
    private int column;

    ResultSheet(Worksheet sheet, List<? extends ResultColumn<?>> columns) {
        this.sheet = sheet;
        widths = columns.stream()
                .mapToDouble(
                        column -> Math.max(NARROWEST, column.titleWithUnit().length() * CHARACTER))
                .toArray();
        methods = columns.stream().map(ResultColumn::name).toList().indexOf("method");
    }

    @Override
    public void text(String cell) {
        String text = WorkbookFile.text(cell);
        sheet.value(row, column, text);
        if (column == methods) {
            tint(text);
        }
        widths[column] = Math.max(widths[column], text.length() * CHARACTER);
        column++;
    }

    @Override
    public void number(double number, int decimals) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("A result (" + number + ") must be a finite number.");
        }
        sheet.value(row, column++, number);
    }

    @Override
    public void nothing() {
        column++;
    }

    /** Ends the row. */
    void end() {
        row++;
        column = 0;
    }

    /** A method in its colours, as in the pictures. */
    private void tint(String method) {
        Arrays.stream(Method.values())
                .filter(known -> known.name().equalsIgnoreCase(method))
                .map(MethodStyle::of)
                .forEach(style -> sheet.style(row, column)
                        .fillColor(style.tint().rgb())
                        .fontColor(style.text().rgb())
                        .set());
    }
}
