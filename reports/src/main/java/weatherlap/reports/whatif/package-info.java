/**
 * The workbook's first sheets: the answer of the report, and a what-if that computes in the spreadsheet itself. Its formulas are those of
 * {@link weatherlap.sim.price} and of a method's result; what they begin from is taken from the run.
 */
package weatherlap.reports.whatif;
