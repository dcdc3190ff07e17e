/** Workbooks where the command line takes folders, and the templates of both: unpacked for the run, named as the user knows them. */
package weatherlap.reports.workbook;
