/**
 * What does the reader take away? The command line, and the pages, printed sheets, workbook and tables that it writes.
 * The only package that writes results to files.
 */
package weatherlap.reports;
