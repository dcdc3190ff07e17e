/**
 * What do the results look like? Draws the tables of {@code weatherlap.analysis} as vector pictures, with fonts that are
 * bundled so that every machine draws the same.
 */
package weatherlap.charts;
