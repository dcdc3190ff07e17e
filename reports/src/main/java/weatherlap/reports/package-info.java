/**
 * What does the reader take away? Starts the command line, whose jobs write the pages, printed sheets, workbook and tables. The only
 * module that writes results to files.
 */
package weatherlap.reports;
