/**
 * What is wrong with a table? Reads CSV text against a schema and collects every problem with its file, physical line and column.
 *
 * <p>Tablesaw holds a table that is read whole, every column as text, with the physical line beside it. Lines are split by the
 * parser that Tablesaw brings (univocity): Tablesaw's own CSV reader counts data rows, so a blank line or a quoted line break would
 * shift every message after it. Cells are checked by the {@link weatherlap.datasets.table.Schema}, which is data and also documents the tables.
 */
package weatherlap.datasets.table;
