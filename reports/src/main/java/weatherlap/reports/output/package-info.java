/**
 * How results reach the disk: a folder that appears whole or not at all, and writers that cannot be made to say more than the
 * tables they are given (no formula in a cell, no tag in a page, no file fetched by a printed sheet).
 */
package weatherlap.reports.output;
