/** What a measurer works out for an opening and a wall. */
package weatherlap.sim.geometry;
