package weatherlap.reports.page;

import java.util.ArrayList;
import java.util.List;

/** A table as lines of text, its columns in line. */
public final class PlainTable {
    private PlainTable() {}

    public static List<String> lines(TableView table) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(table.heads());
        rows.addAll(table.rows());
        int[] widths = new int[table.heads().size()];
        for (List<String> row : rows) {
            for (int c = 0; c < widths.length; c++) {
                widths[c] = Math.max(widths[c], row.get(c).length());
            }
        }
        return rows.stream().map(row -> line(row, widths, table.numbers())).toList();
    }

    private static String line(List<String> row, int[] widths, List<Boolean> numbers) {
        StringBuilder line = new StringBuilder();
        for (int c = 0; c < widths.length; c++) {
            String space = " ".repeat(widths[c] - row.get(c).length());
            line.append(c == 0 ? "" : "  ").append(numbers.get(c) ? space + row.get(c) : row.get(c) + space);
        }
        return line.toString().stripTrailing();
    }
}
