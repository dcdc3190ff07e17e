/** Many things, one after another, on several threads; and the last few of them kept. */
package weatherlap.sim.many;
