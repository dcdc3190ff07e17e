package weatherlap.sim.explain;

import weatherlap.sim.Check;

/**
 * Where a number comes from: the row of an assumption table and what that row rests on.
 *
 * @param table file name, such as {@code labour-steps.csv}
 * @param row key of the row in it
 * @param source citation; empty only where the basis needs none
 */
public record Origin(String table, String row, Basis basis, String source) {
    public Origin {
        Check.text("table", table);
        Check.text("row", row);
        if (basis.needsSource()) {
            Check.text("source of " + table + ":" + row, source);
        }
    }
}
