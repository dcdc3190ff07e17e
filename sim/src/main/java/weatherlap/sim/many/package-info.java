/** Work on other threads: many things one after another, or one before it is asked for; and the last few values kept. */
package weatherlap.sim.many;
