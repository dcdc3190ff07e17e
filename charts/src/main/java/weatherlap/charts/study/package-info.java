/**
 * What do the studies say in pictures? Where the answer turns, what drives it, how well fitted rates meet the records, and the
 * driving rain of a place.
 */
package weatherlap.charts.study;
