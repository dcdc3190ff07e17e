/**
 * How little must be known to begin? One table of eight columns, a row a window, becomes the three tables of a portfolio; all that it leaves out
 * is taken as {@code house-defaults.csv} has it, each with its basis and the least and most that it may be, so that a run can say what it is worth
 * to measure it.
 */
package weatherlap.datasets.shortform;
