/**
 * The main job: the owner's report, page and sheet, workbook, tables and summaries of one comparison. What is shown is chosen and put
 * into words here; what it says was worked out below, in {@code weatherlap.sim} and {@code weatherlap.analysis}.
 */
package weatherlap.reports.compare;
