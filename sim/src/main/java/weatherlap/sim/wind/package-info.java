/** The pressure that wind puts on a window, and the rating that a unit needs for it. */
package weatherlap.sim.wind;
