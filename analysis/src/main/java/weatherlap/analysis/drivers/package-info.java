/**
 * Which rows of the assumption tables does the answer hang on?
 *
 * <p>Every row with a range is a factor: a labour step's minutes, a material's price, the price list of new units, what a lap fault
 * lets in, a scalar of the scenario. A point of the unit cube sets each of them to the quantile of its beta-PERT distribution, exactly;
 * the whole take-off is then done again, so that the price follows the rates. Two outcomes are compared over the portfolio: the cost
 * difference (full flange less insert, horizon cost, mean USD a house) and the risk difference (chance of leak damage in the house,
 * mean). What varies from house to house by luck (pace, laps, weather) is averaged over the same few stratified draws at every point.
 *
 * @see weatherlap.analysis.sensitivity
 */
package weatherlap.analysis.drivers;
