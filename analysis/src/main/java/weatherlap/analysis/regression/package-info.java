/** Least squares with a prior, robust and non-negative, of any number of equations; and the robust middle of some paces. */
package weatherlap.analysis.regression;
