package weatherlap.reports.format;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

    /** Most points of a row, and most characters of a column. */
    private static final double HIGHEST = 409.5;

    private static final double WIDEST = 255;

    private static final FilledCell[] NONE = {};

    private final Worksheet sheet;
    private final List<FilledCell[]> rows = new ArrayList<>();
    private final List<Style> styles = new ArrayList<>();
    private final Map<Integer, Double> heights = new HashMap<>();
    private final List<PlacedChart> charts = new ArrayList<>();
    private int columns;
    private int columnsWithWidth;

    /** How cells look. */
    private record Style(Look look, String format) {
        boolean is(Look other, String otherFormat) {
            return look == other && format.equals(otherFormat);
        }
    }

    private CellSheet(Worksheet sheet) {
        this.sheet = sheet;
    }

    static CellSheet filled(Workbook workbook, Filler filler) throws IOException {
        Worksheet sheet = workbook.newWorksheet(filler.title());
        CellSheet cells = new CellSheet(sheet);
        sheet.pageOrientation("landscape");
        filler.fill(cells);
        cells.frame();
        sheet.finish();
        return cells;
    }

    /** All but the rows, which {@link #in} adds: in their place an empty cell of each style, in the last column. */
    private void frame() {
        for (int c = columnsWithWidth; c < columns; c++) {
            int characters = characters(c);
            if (characters > 0) {
                sheet.width(c, Math.min(WIDEST, (int) ((characters * 7 + 10) / 7.0 * 256) / 256.0));
            }
        }
        for (int i = 0; i < styles.size(); i++) {
            StyleSetter cell = sheet.style(i, columns - 1);
            styles.get(i).look.on(cell);
            if (!styles.get(i).format.isEmpty()) {
                cell.format(styles.get(i).format);
            }
            cell.set();
        }
    }

    private int characters(int column) {
        int most = 0;
        for (FilledCell[] row : rows) {
            if (column < row.length && row[column] != null) {
                most = Math.max(most, row[column].characters());
            }
        }
        return most;
    }

    /** @param frame the part of the sheet, as it is without its rows */
    Content in(Content frame) {
        return out -> {
            String xml = frame.text();
            int begin = xml.indexOf("<row ");
            int end = xml.indexOf("</sheetData>");
            List<String> looks = ResultSheet.STYLED
                    .matcher(xml)
                    .results()
                    .map(cell -> cell.group(2))
                    .toList();
            SheetRows.write(xml.substring(0, begin), out);
            SheetRows written = new SheetRows(out);
            for (int r = 0; r < rows.size(); r++) {
                if (rows.get(r).length > 0) {
                    Double height = heights.get(r);
                    written.begin(r, height == null ? "" : " ht=\"" + height + "\" customHeight=\"1\"");
                    for (FilledCell cell : rows.get(r)) {
                        if (cell == null) {
                            written.gap();
                        } else {
                            cell.write(looks.get(cell.style()), written);
                        }
                    }
                    written.end();
                }
            }
            SheetRows.write(xml.substring(end), out);
        };
    }

    private void put(int row, int column, FilledCell cell) {
        while (rows.size() <= row) {
            rows.add(NONE);
        }
        FilledCell[] cells = rows.get(row);
        if (cells.length <= column) {
            columns = Math.max(columns, column + 1);
            cells = Arrays.copyOf(cells, columns);
            rows.set(row, cells);
        }
        cells[column] = cell;
    }

    private int style(Look look, String format) {
        int number = 0;
        while (number < styles.size() && !styles.get(number).is(look, format)) {
            number++;
        }
        if (number == styles.size()) {
            styles.add(new Style(look, format));
        }
        return number;
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
        String shown = WorkbookFile.text(text);
        put(row, column, new FilledCell(style(look, ""), "", shown, true, shown.length()));
    }

    /** A line of small importance at the left, over the empty cells right of it. */
    public void note(int row, String text) {
        text(row, 0, text, Look.ASIDE);
    }

    /** A text over several cells of a row, which is made high enough for it. */
    public void text(int row, int left, int right, String text, Look look, double charactersALine) {
        put(row, left, new FilledCell(style(look, ""), "", WorkbookFile.text(text), true, 0));
        sheet.range(row, left, row, right).merge();
        lines(row, Math.ceil(text.length() / charactersALine));
    }

    /** @param format of the spreadsheet, such as {@code #,##0} */
    public void number(int row, int column, double value, String format, Look look) {
        String shown = finite(value);
        put(row, column, new FilledCell(style(look, format), "", shown, false, shown.length()));
    }

    /**
     * A formula.
     *
     * @param expression of the program's own making: no text of a table may be in it
     * @param value that it has with the numbers of the run
     */
    public void formula(int row, int column, String expression, double value, String format, Look look) {
        put(row, column, new FilledCell(style(look, format), expression, finite(value), false, 0));
    }

    private static String finite(double value) {
        return Double.toString(Check.within("number of a sheet", value, -Double.MAX_VALUE, Double.MAX_VALUE));
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

    /** The widths of the first columns; others are as wide as the longest of their texts and numbers. */
    public void widths(double... characters) {
        columnsWithWidth = characters.length;
        for (int c = 0; c < characters.length; c++) {
            sheet.width(c, characters[c]);
        }
    }

    /** Makes a row high enough for some lines of text. */
    public void lines(int row, double lines) {
        heights.put(row, Math.min(HIGHEST, 4 + WorkbookFile.LINE_PT * Math.max(1, lines)));
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
                FilledCell[] cells = row < rows.size() ? rows.get(row) : NONE;
                written.add(column < cells.length && cells[column] != null ? cells[column].value() : "");
            }
        }
        return new ColumnChart.Cells(range(sheet.getName(), top, left, bottom, right), written);
    }

    /** A chart over the rectangle from a cell to another, the second not covered. */
    public void chart(ColumnChart chart, int top, int left, int bottom, int right) {
        charts.add(new PlacedChart(chart, top, left, bottom, right));
    }

    List<PlacedChart> charts() {
        return charts;
    }
}
