/**
 * The work on one house by one method, taken off once: what {@link weatherlap.sim.labour}, {@link weatherlap.sim.material} and
 * {@link weatherlap.sim.price} make of its quantities, as trees that explain themselves and as weights for drawing.
 *
 * <p>Shared work is counted once: travel and what a day or a job needs belong to the house, staging and siding to the wall. An
 * opening's own minutes hold none of it.
 *
 * <p>A draw of the house's minutes is Σ minutes[step] · weight[step] + travel, and of its money Σ price[item] · packages[item] +
 * Σ unit price · factor + fixed; with every draw at its mean it gives the mean of the tree.
 */
package weatherlap.sim.work;
