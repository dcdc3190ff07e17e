/** Many things, one after another, on several threads. */
package weatherlap.sim.many;
