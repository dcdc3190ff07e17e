package weatherlap.reports.workbook;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import weatherlap.charts.kit.Tone;
import weatherlap.datasets.table.CellType;
import weatherlap.datasets.table.Column;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Schema;
import weatherlap.sim.Check;

/**
 * A table as a sheet to fill in: columns that must be filled first and colored, the others grouped; in each heading the name and below it the
 * unit, with a note that says what the column holds; lists to pick from for words; texts kept as texts, so that no cell can be a formula.
 */
final class TableSheet {
    /** Rows that lists to pick from reach down to. */
    private static final int LAST_ROW = 2000;

    private static final Set<String> DAYS = Set.of("date", "finished", "followed_until", "called");
    private static final int DIGITS = 15;
    private static final double NARROWEST = 11;
    private static final double LABEL = 30;

    private final Schema schema;
    private final List<Column> columns;
    private final int needed;

    TableSheet(Schema schema, List<Column> wanted) {
        this.schema = schema;
        List<Column> must = wanted.stream().filter(c -> !c.mayBeEmpty()).toList();
        needed = must.size();
        columns = Stream.concat(must.stream(), wanted.stream().filter(Column::mayBeEmpty))
                .toList();
    }

    /** @param lists takes the words of columns */
    void write(Workbook workbook, String name, List<Row> rows, WordLists lists) throws IOException {
        Check.within("rows of a sheet", rows.size(), 0, Worksheet.MAX_ROWS - 1);
        Worksheet sheet = workbook.newWorksheet(name);
        for (int c = 0; c < columns.size(); c++) {
            Column column = columns.get(c);
            heading(sheet, c, column);
            if (column.type() instanceof CellType.Word word) {
                lists.pick(sheet.range(1, c, Math.max(LAST_ROW, rows.size()), c), word.allowed(), true, column.name());
            }
            for (int r = 0; r < rows.size(); r++) {
                value(sheet, r + 1, c, column, rows.get(r).text(column.name()));
            }
        }
        if (needed < columns.size()) {
            sheet.groupCols(needed, columns.size() - 1);
        }
        sheet.rowHeight(0, 45);
        sheet.freezePane((int) schema.key().stream().limit(3).count(), 1);
        sheet.finish();
    }

    private void heading(Worksheet sheet, int c, Column column) {
        String unit = unit(column);
        sheet.value(0, c, column.name() + (unit.isEmpty() ? "" : "\n" + unit));
        sheet.comment(
                0,
                c,
                column.meaning() + ". Holds: " + column.type().expected() + "."
                        + (column.mayBeEmpty() ? " May stay empty." : " Must be filled."));
        double least = column.name().equals("label") ? LABEL : NARROWEST;
        sheet.width(c, Math.max(least, 1.2 * column.name().length()));
        sheet.style(c).format(format(column)).set();
        sheet.style(0, c)
                .bold()
                .wrapText(true)
                .verticalAlignment("top")
                .fontColor(column.mayBeEmpty() ? Tone.INK.rgb() : Tone.PAPER.rgb())
                .fillColor(column.mayBeEmpty() ? Tone.LINE.rgb() : Tone.FULL_FLANGE.rgb())
                .set();
    }

    private static String unit(Column column) {
        if (column.type() instanceof CellType.Number number) {
            return number.unit();
        }
        if (column.type() instanceof CellType.Whole) {
            return "whole number";
        }
        if (column.type() instanceof CellType.Word) {
            return "pick one";
        }
        if (column.type() instanceof CellType.Words) {
            return "one or more, | between";
        }
        return DAYS.contains(column.name())
                ? "year-month-day"
                : column.type() instanceof CellType.Key ? "a name" : "text";
    }

    /** Inches are shown as fractions, so that 5/8 is typed as it is read; texts stay as typed. */
    private static String format(Column column) {
        if (column.type() instanceof CellType.Number number) {
            return number.unit().equals("inches") ? "# ??/??" : "General";
        }
        if (column.type() instanceof CellType.Whole) {
            return "0";
        }
        return DAYS.contains(column.name()) ? "yyyy-mm-dd" : "@";
    }

    private static void value(Worksheet sheet, int r, int c, Column column, String text) {
        if (text.isEmpty()) {
            return;
        }
        if (column.type() instanceof CellType.Number || column.type() instanceof CellType.Whole) {
            number(sheet, r, c, text);
        } else {
            sheet.value(r, c, text);
        }
        sheet.style(r, c).format(format(column)).set();
    }

    /** A number as such; as its text where it has more digits than spreadsheets keep, or where it is none. */
    static void number(Worksheet sheet, int r, int c, String text) {
        BigDecimal value = parsed(text);
        if (value == null || value.stripTrailingZeros().precision() > DIGITS) {
            sheet.value(r, c, text);
        } else {
            sheet.value(r, c, value.doubleValue());
        }
    }

    private static BigDecimal parsed(String text) {
        try {
            return new BigDecimal(text);
        } catch (NumberFormatException e) {
            return null;
        }
    }
}
