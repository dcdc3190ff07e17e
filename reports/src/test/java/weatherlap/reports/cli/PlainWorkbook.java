package weatherlap.reports.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import weatherlap.datasets.workbook.SheetTable;

/** A workbook with the tables of a folder, as somebody would who pasted each into a sheet: numbers as numbers, nothing else formatted. */
final class PlainWorkbook {
    private PlainWorkbook() {}

    static Path write(Path folder, Path workbook) throws IOException {
        Files.createDirectories(workbook.getParent());
        try (OutputStream bytes = Files.newOutputStream(workbook);
                Workbook book = new Workbook(bytes, "test", "1.0")) {
            for (SheetTable table : SheetTable.ALL) {
                if (Files.exists(folder.resolve(table.file()))) {
                    sheet(book.newWorksheet(table.sheet()), Outputs.rows(folder.resolve(table.file())));
                }
            }
        }
        return workbook;
    }

    private static void sheet(Worksheet sheet, List<List<String>> rows) throws IOException {
        for (int r = 0; r < rows.size(); r++) {
            for (int c = 0; c < rows.get(r).size(); c++) {
                String cell = rows.get(r).get(c);
                if (cell.matches("-?(0|[1-9]\\d{0,14})(\\.\\d{1,6})?")) {
                    sheet.value(r, c, Double.parseDouble(cell));
                } else if (!cell.isEmpty()) {
                    sheet.value(r, c, cell);
                }
            }
        }
        sheet.finish();
    }
}
