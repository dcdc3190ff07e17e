/** Which way do the walls that drink most face? Driving rain by bearing as a table, and where two standards disagree, in words. */
package weatherlap.analysis.exposure;
