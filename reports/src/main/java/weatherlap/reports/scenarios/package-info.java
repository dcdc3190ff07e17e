/** Sets of assumptions side by side: how a user names them, and the page, workbook and tables that come of them. */
package weatherlap.reports.scenarios;
