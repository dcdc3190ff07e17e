/**
 * What does each column of a result mean, in which unit, to how many decimals? One catalogue that CSV headers, the workbook, tables on
 * pages and axis labels are made from.
 */
package weatherlap.analysis.columns;
