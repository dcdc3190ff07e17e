/**
 * How much there is to do: the quantity of every driver, as taken off the drawings of a house. Labour and material multiply these
 * quantities and never look at the geometry behind them.
 */
package weatherlap.sim.quantity;
