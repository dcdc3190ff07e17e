/**
 * Simulates both ways to replace a window in a house that stands. Start at {@link weatherlap.sim.house} (what is measured), {@link
 * weatherlap.sim.assumptions} (what is assumed).
 */
package weatherlap.sim;
