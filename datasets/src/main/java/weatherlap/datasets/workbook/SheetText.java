package weatherlap.datasets.workbook;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.Row;
import weatherlap.datasets.table.CsvText;
import weatherlap.datasets.table.Headings;
import weatherlap.datasets.table.Problem;

/** One sheet as CSV: a line a row of the sheet, so that the numbers of lines are those of rows. Empty rows at its end are left out. */
final class SheetText {
    private static final int MOST_PROBLEMS = 100;
    private static final int MOST_CHARACTERS = 200_000_000;

    private final String sheet;
    private final CellText cells;
    private final StringBuilder text = new StringBuilder();
    private final Map<Integer, String> headings = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();
    private int line;

    SheetText(String sheet, CellText cells) {
        this.sheet = sheet;
        this.cells = cells;
    }

    void read(Iterator<Row> rows) {
        while (rows.hasNext() && problems.size() < MOST_PROBLEMS) {
            Row row = rows.next();
            if (row.stream().anyMatch(cell -> cell != null && !isBlank(cell))) {
                take(row);
            }
            if (text.length() > MOST_CHARACTERS) {
                problem(Integer.toString(row.getRowNum()), "is past what one sheet may hold; nothing below was read");
                return;
            }
        }
    }

    private boolean isBlank(Cell cell) {
        return cells.of(cell).isEmpty() && CellText.fault(cell).isEmpty();
    }

    private void take(Row row) {
        if (row.getRowNum() <= line) {
            problem(
                    Integer.toString(row.getRowNum()),
                    "is out of place in the file; open it in a spreadsheet and save it again");
            return;
        }
        for (; line < row.getRowNum() - 1; line++) {
            text.append('\n');
        }
        line++;
        if (headings.isEmpty()) {
            row.stream()
                    .filter(cell -> cell != null && !CellText.heading(cell).isEmpty())
                    .forEach(cell -> headings.put(cell.getColumnIndex(), CellText.heading(cell)));
            text.append(CsvText.line(List.copyOf(headings.values())));
            return;
        }
        Map<Integer, String> values = new LinkedHashMap<>();
        row.stream().filter(cell -> cell != null && !isBlank(cell)).forEach(cell -> value(cell, values));
        text.append(CsvText.line(headings.keySet().stream()
                .map(column -> values.getOrDefault(column, ""))
                .toList()));
    }

    private void value(Cell cell, Map<Integer, String> values) {
        String fault = CellText.fault(cell);
        if (!fault.isEmpty()) {
            problem(cell.getAddress().toString(), fault);
        } else if (!headings.containsKey(cell.getColumnIndex())) {
            problem(cell.getAddress().toString(), "is in a column without a heading");
        }
        values.put(cell.getColumnIndex(), fault.isEmpty() ? cells.of(cell) : "");
    }

    private void problem(String place, String message) {
        problems.add(new Problem(sheet + "!" + place, 0, "", message));
    }

    String text() {
        return text.toString();
    }

    List<Problem> problems() {
        return problems;
    }

    SheetNames.Sheet names() {
        Map<String, String> letters = new LinkedHashMap<>();
        headings.forEach((column, name) -> letters.putIfAbsent(name, SheetNames.letters(column)));
        headings.forEach((column, name) -> letters.putIfAbsent(Headings.folded(name), SheetNames.letters(column)));
        return new SheetNames.Sheet(sheet, letters);
    }
}
