/**
 * What stands in the tables? Reads portfolios, assumptions, climates and job records into the domain of
 * {@code weatherlap.sim}, and reports every fault of the input by file, row and column.
 */
package weatherlap.datasets;
