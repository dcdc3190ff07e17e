/**
 * At which value does the preferred method change?
 *
 * <p>Let D(v) be the mean cost of the full flange less that of the insert when one assumption has the value v, all else as assumed and
 * the draws the same at every v. The preference changes where D changes sign. The range is scanned at equal steps, and each change of
 * sign between two neighbours is narrowed down by Brent's method; two changes between neighbours are not seen.
 *
 * <p>The interval is of the sampling of draws: the draws are drawn anew with replacement, D is taken on straight lines between the
 * values that were evaluated, and the crossings found lie between the 5 and 95 % points. It narrows as draws are added. Beside it stands
 * the share of single draws (states of the world) in which the full flange costs less at either end of the range, which does not.
 *
 * @see "Brent 1973, Algorithms for Minimization without Derivatives, ch. 4; Efron and Tibshirani 1993, An Introduction to the Bootstrap,
 *     ch. 13"
 */
package weatherlap.analysis.breakeven;
