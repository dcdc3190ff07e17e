/**
 * One workbook (Office Open XML, ISO/IEC 29500) where a folder of tables goes. Its sheets become the text of the tables that they stand for,
 * which the readers of CSV take like any other, so that no rule stands twice; {@link weatherlap.datasets.workbook.SheetNames} turns what
 * they say of a file, a line and a column into sheet and cell.
 */
package weatherlap.datasets.workbook;
