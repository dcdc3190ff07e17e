/**
 * What do the results say, as tables? Makes the tables of {@code weatherlap.analysis.columns} from the results of a run, and sums
 * them up over a portfolio and its segments. Nothing is rounded here; the catalogue says to how many decimals a column is shown.
 */
package weatherlap.analysis.tables;
