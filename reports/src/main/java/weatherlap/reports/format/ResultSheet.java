package weatherlap.reports.format;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import weatherlap.analysis.columns.CellTaker;
import weatherlap.analysis.columns.ResultColumn;
import weatherlap.analysis.tables.TableCells;
import weatherlap.datasets.workbook.SheetNames;
import weatherlap.sim.Each;
import weatherlap.sim.method.Method;

/**
 * Writes the rows of a table straight into the part of a sheet, which a library of cells would first keep: below a header and rows of empty
 * cells, which say how the cells of a column look.
 *
 * @see "ISO/IEC 29500-1:2016, 18.3.1.4 cell, 18.3.1.53 rich text inline"
 */
final class ResultSheet implements CellTaker {
    private static final String ROW_ENDS = "</row>";
    private static final Pattern STYLED = Pattern.compile("<c r=\"([A-Z]+\\d+)\" s=\"(\\d+)\"");

    private final List<String> begins;
    private final List<String> styles;
    private final int methods;
    private final Map<String, String> tints = new HashMap<>();
    private final StringBuilder xml = new StringBuilder();
    private int row = 1;
    private int column;

    /** @param patterns the rows of empty cells */
    private ResultSheet(String patterns, List<? extends ResultColumn<?>> columns) {
        Map<String, String> looks = new HashMap<>();
        for (Matcher cell = STYLED.matcher(patterns); cell.find(); ) {
            looks.put(cell.group(1), " s=\"" + cell.group(2) + "\"");
        }
        begins = Each.upTo(columns.size(), c -> "<c r=\"" + SheetNames.letters(c));
        styles = Each.upTo(columns.size(), c -> looks.getOrDefault(CellSheet.cell(1, c), ""));
        methods = methods(columns);
        for (Method method : Method.values()) {
            tints.put(method.name(), looks.get(CellSheet.cell(tint(method), methods)));
        }
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
            write(frame.substring(0, header), out);
            ResultSheet rows =
                    new ResultSheet(frame.substring(header, end), table.layout().columns());
            for (int row = 0; row < table.count(); row++) {
                rows.write(table, row, out);
            }
            write(frame.substring(end), out);
        };
    }

    private void write(TableCells table, int at, OutputStream out) throws IOException {
        row++;
        column = 0;
        xml.setLength(0);
        xml.append("<row r=\"").append(row).append("\">");
        table.give(at, this);
        write(xml.append(ROW_ENDS).toString(), out);
    }

    private static void write(String xml, OutputStream out) throws IOException {
        out.write(xml.getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public void text(String cell) {
        String text = WorkbookFile.text(cell);
        begin(column == methods ? tints.getOrDefault(text.toUpperCase(Locale.ROOT), "") : styles.get(column));
        xml.append(" t=\"inlineStr\"><is><t");
        xml.append(text.strip().length() < text.length() ? " xml:space=\"preserve\">" : ">");
        append(text);
        xml.append("</t></is></c>");
    }

    /** A method in its colours, as in the pictures. */
    private void begin(String style) {
        xml.append(begins.get(column)).append(row).append('"').append(style);
        column++;
    }

    private void append(String text) {
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            switch (letter) {
                case '&' -> xml.append("&amp;");
                case '<' -> xml.append("&lt;");
                case '>' -> xml.append("&gt;");
                default -> xml.append(letter);
            }
        }
    }

    @Override
    public void number(double number, int decimals) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("A result (" + number + ") must be a finite number.");
        }
        begin(styles.get(column));
        xml.append("><v>").append(number).append("</v></c>");
    }

    @Override
    public void nothing() {
        column++;
    }
}
