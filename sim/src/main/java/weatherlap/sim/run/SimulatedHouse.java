package weatherlap.sim.run;

/**
 * One house as simulated.
 *
 * @param result what comes of it by each method alone
 * @param parts of any plan; holds draws of every opening, so that it is not kept for many houses
 */
public record SimulatedHouse(HouseResult result, PlanParts parts) {}
