/** How a number came about: a tree of named amounts made by the code that computes the number. */
package weatherlap.sim.explain;
