/**
 * What a user can have done, apart from how it is asked for: one class a command, from options that are already parsed to a folder
 * that is written, or lines that are printed.
 */
package weatherlap.reports.jobs;
