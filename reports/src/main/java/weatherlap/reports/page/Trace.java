package weatherlap.reports.page;

import java.util.List;

/**
 * Where a number of the answer comes from.
 *
 * @param id name of this within the page
 * @param measure what the number is
 * @param results file and column that hold it for each house or opening
 * @param measured files and columns of the portfolio that it starts from
 * @param assumed rows of the assumptions, table by table
 */
public record Trace(String id, String measure, String results, String measured, List<Rows> assumed) {
    public Trace {
        assumed = List.copyOf(assumed);
    }

    /** Rows of one table. */
    public record Rows(String table, List<Row> rows) {
        public Rows {
            rows = List.copyOf(rows);
        }
    }

    /**
     * A row.
     *
     * @param key as the table has it
     * @param anchor its name within the page
     */
    public record Row(String key, String anchor) {}
}
