/**
 * What does each column of a result mean, in which unit, to how many decimals, and what does it take from a row? CSV, workbook, tables
 * on pages, axis labels and the README are made from the same columns.
 */
package weatherlap.analysis.columns;
