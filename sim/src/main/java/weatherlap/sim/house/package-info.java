/** What a measurer brings back: houses, their elevations and the openings in them. Plain records, checked when they are made. */
package weatherlap.sim.house;
