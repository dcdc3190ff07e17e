package weatherlap.reports.workbook;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.dhatim.fastexcel.Range;
import org.dhatim.fastexcel.VisibilityState;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import weatherlap.datasets.workbook.SheetNames;

/** The lists of words that cells are picked from, each a column of a sheet that nobody sees. */
final class WordLists {
    private static final String SHEET = "Lists";

    private final Map<List<String>, Integer> columns = new LinkedHashMap<>();

    /**
     * Lets cells be picked from a list alone.
     *
     * @param title of what is said where something else is typed
     */
    void pick(Range cells, List<String> words, boolean mayBeBlank, String title) {
        cells.validateWithListByFormula(range(words))
                .allowBlank(mayBeBlank)
                .showDropdown(true)
                .showErrorMessage(true)
                .errorTitle(title)
                .error("Pick one of the list.");
    }

    /** Where a list will stand, as a formula. */
    private String range(List<String> words) {
        String column = SheetNames.letters(columns.computeIfAbsent(words, w -> columns.size()));
        return SHEET + "!$" + column + "$1:$" + column + "$" + words.size();
    }

    void write(Workbook workbook) throws IOException {
        Worksheet sheet = workbook.newWorksheet(SHEET);
        sheet.setVisibilityState(VisibilityState.HIDDEN);
        columns.forEach((words, column) -> {
            for (int r = 0; r < words.size(); r++) {
                sheet.value(r, column, words.get(r));
            }
        });
        sheet.finish();
    }
}
