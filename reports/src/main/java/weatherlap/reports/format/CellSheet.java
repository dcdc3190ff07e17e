package weatherlap.reports.format;

import java.io.IOException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.dhatim.fastexcel.DataValidationErrorStyle;
import org.dhatim.fastexcel.StyleSetter;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import weatherlap.datasets.workbook.SheetNames;
import weatherlap.sim.Check;

/**
 * A sheet that is filled cell by cell. Texts are stored as texts, whatever they begin with; formulas are the program's own, and each brings
 * the value that it has with the numbers of the run, for those who look at the sheet without a spreadsheet. Rows and columns count from 0.
 */
public final class CellSheet {
    /** What fills a sheet. */
    public interface Filler {
        /** Name of the sheet: up to 31 letters, digits, spaces and hyphens. */
        String title();

        void fill(CellSheet sheet);
    }

    private final Worksheet sheet;
    private final Map<String, String> asRun = new LinkedHashMap<>();
    private final List<PlacedChart> charts = new ArrayList<>();
    private final Map<Style, SortedMap<Integer, BitSet>> styled = new LinkedHashMap<>();

    /** How cells look: the rows of each column that do are set. */
    private record Style(Look look, Optional<String> format) {}

    private CellSheet(Worksheet sheet) {
        this.sheet = sheet;
    }

    static CellSheet filled(Workbook workbook, Filler filler) throws IOException {
        Worksheet sheet = workbook.newWorksheet(filler.title());
        CellSheet cells = new CellSheet(sheet);
        sheet.pageOrientation("landscape");
        filler.fill(cells);
        cells.style();
        sheet.finish();
        return cells;
    }

    /** A cell as formulas of other sheets name it. */
    public static String cell(String sheet, int row, int column) {
        return "'" + sheet + "'!$" + SheetNames.letters(column) + "$" + (row + 1);
    }

    /** Cells as formulas of other sheets name them. */
    public static String range(String sheet, int top, int left, int bottom, int right) {
        return cell(sheet, top, left) + ":$" + SheetNames.letters(right) + "$" + (bottom + 1);
    }

    /** A cell as formulas of its own sheet name it. */
    public static String cell(int row, int column) {
        return SheetNames.letters(column) + (row + 1);
    }

    /** Cells side by side, or one above the other, as formulas of their own sheet name them. */
    public static String range(int top, int left, int bottom, int right) {
        return cell(top, left) + ":" + cell(bottom, right);
    }

    public void text(int row, int column, String text, Look look) {
        sheet.value(row, column, WorkbookFile.text(text));
        style(row, column, look, Optional.empty());
    }

    /** A line of small importance at the left, over the empty cells right of it. */
    public void note(int row, String text) {
        text(row, 0, text, Look.ASIDE);
    }

    /** A text over several cells of a row, which is made high enough for it. */
    public void text(int row, int left, int right, String text, Look look, double charactersALine) {
        text(row, left, text, look);
        sheet.range(row, left, row, right).merge();
        lines(row, Math.ceil(text.length() / charactersALine));
    }

    /** @param format of the spreadsheet, such as {@code #,##0} */
    public void number(int row, int column, double value, String format, Look look) {
        sheet.value(row, column, finite(value));
        style(row, column, look, Optional.of(format));
    }

    /**
     * A formula.
     *
     * @param expression of the program's own making: no text of a table may be in it
     * @param value that it has with the numbers of the run
     */
    public void formula(int row, int column, String expression, double value, String format, Look look) {
        sheet.formula(row, column, expression);
        asRun.put(cell(row, column), Double.toString(finite(value)));
        style(row, column, look, Optional.of(format));
    }

    private static double finite(double value) {
        return Check.within("number of a sheet", value, -Double.MAX_VALUE, Double.MAX_VALUE);
    }

    private void style(int row, int column, Look look, Optional<String> format) {
        styled.computeIfAbsent(new Style(look, format), style -> new TreeMap<>())
                .computeIfAbsent(column, c -> new BitSet())
                .set(row);
    }

    /** Cells of a column that stand below one another are styled at a time: each call costs the same, however many they are. */
    private void style() {
        styled.forEach((style, columns) -> columns.forEach((column, rows) -> {
            for (int top = rows.nextSetBit(0); top >= 0; top = rows.nextSetBit(rows.nextClearBit(top))) {
                StyleSetter cells = sheet.range(top, column, rows.nextClearBit(top) - 1, column)
                        .style();
                style.look.on(cells);
                style.format.ifPresent(cells::format);
                cells.set();
            }
        }));
    }

    /** Lets a cell hold one of some whole numbers alone. */
    public void allow(int row, int column, List<Integer> numbers, String message) {
        String words = String.join(",", numbers.stream().map(String::valueOf).toList());
        sheet.range(row, column, row, column)
                .validateWithListByFormula("\"" + words + "\"")
                .allowBlank(false)
                .showDropdown(true)
                .errorStyle(DataValidationErrorStyle.STOP)
                .showErrorMessage(true)
                .errorTitle("Not computed")
                .error(message);
    }

    /** Lets a cell hold only what makes a formula true; the formula must do without &lt; and &amp;, which are not escaped in it. */
    public void allow(int row, int column, String formula, String message) {
        sheet.range(row, column, row, column)
                .validateWithFormula(formula)
                .allowBlank(false)
                .errorStyle(DataValidationErrorStyle.STOP)
                .showErrorMessage(true)
                .errorTitle("Out of range")
                .error(message);
    }

    public void widths(double... characters) {
        for (int c = 0; c < characters.length; c++) {
            sheet.width(c, characters[c]);
        }
    }

    /** Makes a row high enough for some lines of text. */
    public void lines(int row, double lines) {
        sheet.rowHeight(row, 4 + WorkbookFile.LINE_PT * Math.max(1, lines));
    }

    /** Keeps rows and columns in sight. */
    public void freeze(int rows, int columns) {
        sheet.freezePane(columns, rows);
    }

    /** A list with a line of headings that can be filtered. */
    public void list(int header, int lastRow, int lastColumn) {
        if (lastRow > header) {
            sheet.setAutoFilter(header, 0, lastRow, lastColumn);
        }
        sheet.repeatRows(header);
    }

    /** Folds columns away; a click shows them. */
    public void fold(int left, int right) {
        sheet.groupCols(left, right);
        for (int c = left; c <= right; c++) {
            sheet.hideColumn(c);
        }
    }

    /** A page to read: as wide as a sheet of paper, without lines between its cells. */
    public void asPage() {
        sheet.hideGridLines();
        sheet.setFitToPage(true);
        sheet.fitToWidth((short) 1);
        sheet.fitToHeight((short) 0);
    }

    /** Cells that are filled already, for a chart. */
    public ColumnChart.Cells cells(int top, int left, int bottom, int right) {
        List<String> written = new ArrayList<>();
        for (int row = top; row <= bottom; row++) {
            for (int column = left; column <= right; column++) {
                Object value = sheet.value(row, column);
                written.add(asRun.getOrDefault(cell(row, column), value == null ? "" : value.toString()));
            }
        }
        return new ColumnChart.Cells(range(sheet.getName(), top, left, bottom, right), written);
    }

    /** A chart over the rectangle from a cell to another, the second not covered. */
    public void chart(ColumnChart chart, int top, int left, int bottom, int right) {
        charts.add(new PlacedChart(chart, top, left, bottom, right));
    }

    Map<String, String> asRun() {
        return asRun;
    }

    List<PlacedChart> charts() {
        return charts;
    }
}
