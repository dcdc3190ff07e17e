package weatherlap.reports.output;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import weatherlap.analysis.tables.TableCells;
import weatherlap.reports.format.CellSheet;
import weatherlap.reports.format.Csv;
import weatherlap.reports.format.WorkbookFile;

/** A form that result tables are written in: whichever it is, from the same columns. */
public interface TableWriter {
    /** A file a table. */
    TableWriter CSV = (folder, tables) -> {
        for (TableCells table : tables) {
            try (OutputStream file = folder.begin(table.layout())) {
                Csv.of(table).writeTo(file);
            }
        }
    };

    /**
     * One workbook with a sheet a table.
     *
     * @param about lines of its first sheet
     */
    static TableWriter workbook(List<String> about) {
        return workbook(List.of(), about);
    }

    /** @param front sheets before that one */
    static TableWriter workbook(List<CellSheet.Filler> front, List<String> about) {
        return (folder, tables) -> folder.write("workbook.xlsx", WorkbookFile.of(front, about, tables));
    }

    void write(OutputFolder folder, List<? extends TableCells> tables) throws IOException;
}
