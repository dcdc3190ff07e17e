package weatherlap.reports.format;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.regex.Pattern;
import org.dhatim.fastexcel.BorderSide;
import org.dhatim.fastexcel.BorderStyle;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import weatherlap.analysis.columns.ResultColumn;
import weatherlap.analysis.tables.TableCells;
import weatherlap.charts.kit.MethodStyle;
import weatherlap.charts.kit.Tone;
import weatherlap.sim.Each;
import weatherlap.sim.method.Method;

/**
 * Result tables as a workbook (Office Open XML, ISO/IEC 29500): a sheet that says what the others hold, then one sheet a table.
 * Texts are stored as texts, so no cell can be a formula; numbers keep all their digits and are shown to the decimals of the
 * catalogue with their unit in the header.
 */
public final class WorkbookFile {
    /** Most rows of a sheet, the header among them. */
    private static final int MAX_ROWS = 1_048_576;
    /** Most characters of a cell. */
    private static final int MAX_TEXT = 32_767;

    private static final Pattern NOT_XML =
            Pattern.compile("[^\\t\\n\\x20-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]");

    /** The second of the fonts of pages and pictures: most machines that open a workbook have it, and not the first. */
    private static final String FONT = "Verdana";

    private static final int FONT_PT = 10;
    /** Height of a line of it. */
    static final double LINE_PT = 13.5;

    private WorkbookFile() {}

    /**
     * The workbook.
     *
     * @param about lines of the first sheet, above the list of columns
     */
    public static Content of(List<String> about, List<? extends TableCells> tables) {
        return of(List.of(), about, tables);
    }

    /** @param front sheets before that first one */
    public static Content of(List<CellSheet.Filler> front, List<String> about, List<? extends TableCells> tables) {
        return out -> {
            List<CellSheet> filled = new ArrayList<>();
            FixedZip.copy(
                    zip -> write(zip, front, about, tables, filled), parts -> addParts(parts, filled, tables), out);
        };
    }

    /** @param filled takes the sheets of the front */
    private static void write(
            OutputStream zip,
            List<CellSheet.Filler> front,
            List<String> about,
            List<? extends TableCells> tables,
            List<CellSheet> filled)
            throws IOException {
        try (Workbook workbook = FixedZip.workbook(zip)) {
            workbook.setGlobalDefaultFont(FONT, FONT_PT);
            for (CellSheet.Filler sheet : front) {
                filled.add(CellSheet.filled(workbook, sheet));
            }
            addFirstSheet(workbook.newWorksheet("Read me"), about, tables);
            for (TableCells table : tables) {
                addTable(workbook.newWorksheet(table.layout().title()), table);
            }
        }
    }

    private static void addParts(
            SortedMap<String, Content> parts, List<CellSheet> front, List<? extends TableCells> tables) {
        ChartParts charts = new ChartParts(parts);
        int number = 1;
        for (CellSheet sheet : front) {
            charts.add(number++, sheet);
        }
        for (TableCells table : tables) {
            number++;
            parts.computeIfPresent(sheet(number), (name, sheet) -> ResultSheet.of(sheet, table));
        }
    }

    /**
     * Name of the part of a sheet.
     *
     * @param number from 1
     */
    static String sheet(int number) {
        return "xl/worksheets/sheet" + number + ".xml";
    }

    private static void addFirstSheet(Worksheet sheet, List<String> about, List<? extends TableCells> tables)
            throws IOException {
        int row = 0;
        for (String line : about) {
            sheet.value(row++, 0, text(line));
        }
        sheet.style(0, 0).bold().fontSize(14).fontColor(Tone.INK.rgb()).set();
        row++;
        header(sheet, row++, List.of("sheet", "column", "heading", "unit", "meaning"));
        sheet.freezePane(0, row);
        for (TableCells table : tables) {
            for (ResultColumn<?> column : table.layout().columns()) {
                sheet.value(row, 0, table.layout().title());
                sheet.value(row, 1, column.name());
                sheet.value(row, 2, column.title());
                sheet.value(row, 3, column.unit());
                sheet.value(row++, 4, column.meaning());
            }
        }
        double[] widths = {14, 34, 30, 16, 90};
        for (int i = 0; i < widths.length; i++) {
            sheet.width(i, widths[i]);
        }
        sheet.finish();
    }

    /** All of a sheet but the rows of its table, which {@link ResultSheet} adds. */
    private static void addTable(Worksheet sheet, TableCells result) throws IOException {
        int rows = result.count();
        if (rows >= MAX_ROWS) {
            throw new IOException(result.layout().file() + " has more rows than a sheet can hold (" + MAX_ROWS + ")");
        }
        List<? extends ResultColumn<?>> columns = result.layout().columns();
        header(sheet, 0, Each.of(columns, ResultColumn::titleWithUnit));
        sheet.freezePane(keyColumns(columns), 1);
        for (int c = 0; c < columns.size(); c++) {
            sheet.width(c, ColumnWidth.of(result, c));
            if (columns.get(c).kind() != ResultColumn.Kind.TEXT) {
                sheet.style(1, c).format(format(columns.get(c))).set();
            }
        }
        int methods = ResultSheet.methods(columns);
        if (methods >= 0) {
            tint(sheet, methods);
        }
        if (rows > 0) {
            sheet.setAutoFilter(0, 0, rows, columns.size() - 1);
        }
        sheet.pageOrientation("landscape");
        sheet.repeatRows(0);
        sheet.finish();
    }

    /** Methods in their colours, as in the pictures. */
    private static void tint(Worksheet sheet, int column) {
        for (Method method : Method.values()) {
            MethodStyle style = MethodStyle.of(method);
            sheet.style(ResultSheet.tint(method), column)
                    .fillColor(style.tint().rgb())
                    .fontColor(style.text().rgb())
                    .set();
        }
    }

    /** Columns that name the row and stay in sight: the texts that come first, at most four. */
    private static int keyColumns(List<? extends ResultColumn<?>> columns) {
        int keys = 0;
        while (keys < Math.min(4, columns.size()) && columns.get(keys).kind() == ResultColumn.Kind.TEXT) {
            keys++;
        }
        return keys;
    }

    private static void header(Worksheet sheet, int row, List<String> titles) {
        List<String> shown = new ArrayList<>(titles);
        for (int c = 0; c < shown.size(); c++) {
            sheet.value(row, c, shown.get(c));
        }
        sheet.range(row, 0, row, shown.size() - 1)
                .style()
                .bold()
                .wrapText(true)
                .verticalAlignment("top")
                .fontColor(Tone.INK.rgb())
                .fillColor(Tone.LINE.rgb())
                .borderStyle(BorderSide.BOTTOM, BorderStyle.THIN)
                .set();
    }

    private static String format(ResultColumn<?> column) {
        String whole = column.unit().equals("USD") ? "#,##0" : "0";
        return column.decimals() == 0 ? whole : whole + "." + "0".repeat(column.decimals());
    }

    /** XML knows no control characters, and a cell has an end. */
    static String text(String text) {
        String clean = isPlain(text) ? text : NOT_XML.matcher(text).replaceAll("");
        return clean.length() <= MAX_TEXT ? clean : clean.substring(0, MAX_TEXT - 1) + "…";
    }

    /** Most are, and a look is cheaper than a match. */
    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) < ' ' || text.charAt(i) >= Character.MIN_SURROGATE) {
                return false;
            }
        }
        return true;
    }
}
