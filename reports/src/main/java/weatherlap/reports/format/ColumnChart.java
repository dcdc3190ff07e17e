package weatherlap.reports.format;

import java.util.List;

/**
 * A chart of a workbook that draws cells as columns side by side from 0 up, with their values above them.
 *
 * @param title what it shows
 * @param axis what the columns measure, with its unit
 * @param format of the values, of the spreadsheet
 * @param series of columns, one a color
 */
public record ColumnChart(String title, String axis, String format, List<Series> series) {
    public ColumnChart {
        series = List.copyOf(series);
    }

    /**
     * Columns of one color.
     *
     * @param name in the legend
     * @param rgb six hexadecimal digits
     * @param categories below the columns
     */
    public record Series(Cells name, String rgb, Cells categories, Cells values) {}

    /**
     * Where something stands in the workbook, and what stands there in the run.
     *
     * @param range with its sheet
     * @param written in its cells; an empty text where there is nothing
     */
    public record Cells(String range, List<String> written) {
        public Cells {
            written = List.copyOf(written);
        }
    }
}
