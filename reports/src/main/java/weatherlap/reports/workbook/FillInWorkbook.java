package weatherlap.reports.workbook;

import java.io.IOException;
import org.dhatim.fastexcel.Workbook;
import weatherlap.reports.format.Content;
import weatherlap.reports.format.FixedZip;

/** A workbook to fill in: sheets, behind them the lists that their cells pick from; the same bytes each time. */
final class FillInWorkbook {
    /** Adds the sheets. */
    interface Sheets {
        void write(Workbook workbook, WordLists lists) throws IOException;
    }

    private FillInWorkbook() {}

    static Content of(Sheets sheets) {
        return out -> FixedZip.copy(
                zip -> {
                    try (Workbook workbook = FixedZip.workbook(zip)) {
                        WordLists lists = new WordLists();
                        sheets.write(workbook, lists);
                        lists.write(workbook);
                    }
                },
                out);
    }
}
