/**
 * What does the crew take along? One house and one method as texts, tables and drawings: sizes to order, what is cut, what is
 * bought, in which order the laps go on. Every number is read off {@link weatherlap.sim.run.HouseTakeoff}, nothing is worked out anew.
 */
package weatherlap.reports.crew;
