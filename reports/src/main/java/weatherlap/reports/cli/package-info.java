/**
 * The command line {@code weatherlap}. A command parses its options and calls one job of {@code weatherlap.reports.jobs}; it does
 * nothing else. Results go to standard output or files, everything else to standard error.
 */
package weatherlap.reports.cli;
