/** Labor steps moved to the windows a day that a shop knows. */
package weatherlap.analysis.ownfigures;
