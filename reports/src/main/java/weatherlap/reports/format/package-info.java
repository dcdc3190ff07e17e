/**
 * How results are written in each form: CSV, JSON, workbook, PDF. No writer can be made to say more than the tables it is given (no
 * formula in a cell, no tag in a page, no file fetched by a printed sheet), and none knows of folders or runs.
 */
package weatherlap.reports.format;
