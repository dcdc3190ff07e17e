/**
 * Many houses, many draws. A draw is a set of causes: those of the world (rates, prices, shares admitted, the same for every house),
 * those of a house (pace of its crew, quality of its laps, its weather) and those of an opening. Both methods see the same causes.
 * Start at {@link weatherlap.sim.run.Simulator}.
 */
package weatherlap.sim.run;
