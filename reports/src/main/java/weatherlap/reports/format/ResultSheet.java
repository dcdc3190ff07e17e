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

    private final String[] styles;
    private final int methods;
    private final Map<String, String> tints = new HashMap<>();
    private final StringBuilder xml = new StringBuilder();
    private int row = 1;
    private int column;
    private boolean afterGap;

    /** @param patterns the rows of empty cells */
    private ResultSheet(String patterns, List<? extends ResultColumn<?>> columns) {
        Map<String, String> looks = new HashMap<>();
        for (Matcher cell = STYLED.matcher(patterns); cell.find(); ) {
            looks.put(cell.group(1), " s=\"" + cell.group(2) + "\"");
        }
        styles = new String[columns.size()];
        for (int c = 0; c < styles.length; c++) {
            styles[c] = looks.getOrDefault(CellSheet.cell(1, c), "");
        }
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
        afterGap = false;
        xml.setLength(0);
        xml.append("<row r=\"").append(row).append("\">");
        table.give(at, this);
        write(xml.append(ROW_ENDS).toString(), out);
    }

    private static void write(String xml, OutputStream out) throws IOException {
        out.write(xml.getBytes(StandardCharsets.UTF_8));
    }

    /** A method in its colours, as in the pictures. */
    @Override
    public void text(String cell) {
        String text = WorkbookFile.text(cell);
        begin(column == methods ? tints.getOrDefault(text.toUpperCase(Locale.ROOT), "") : styles[column]);
        xml.append(" t=\"inlineStr\"><is>");
        append(text, xml);
        xml.append("</is></c>");
    }

    /** A cell that does not say where it stands is the next one. */
    private void begin(String style) {
        xml.append("<c");
        if (afterGap) {
            xml.append(" r=\"").append(CellSheet.cell(row - 1, column)).append('"');
            afterGap = false;
        }
        xml.append(style);
        column++;
    }

    /** Appends the text as an element. */
    static void append(String text, StringBuilder xml) {
        xml.append(text.strip().length() < text.length() ? "<t xml:space=\"preserve\">" : "<t>");
        int done = 0;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter == '&' || letter == '<' || letter == '>') {
                xml.append(text, done, i).append(letter == '&' ? "&amp;" : letter == '<' ? "&lt;" : "&gt;");
                done = i + 1;
            }
        }
        xml.append(text, done, text.length()).append("</t>");
    }

    @Override
    public void number(double number, int decimals) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("A result (" + number + ") must be a finite number.");
        }
        begin(styles[column]);
        xml.append("><v>").append(number).append("</v></c>");
    }

    @Override
    public void nothing() {
        column++;
        afterGap = true;
    }
}
