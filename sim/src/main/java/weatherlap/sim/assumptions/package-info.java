/**
 * What is assumed, as data: every labour step, material, price, sightline, lap fault, wage and scalar is a row with its basis and
 * source. Nothing in the simulation is a constant that an analyst might want to change.
 */
package weatherlap.sim.assumptions;
