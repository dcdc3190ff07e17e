package weatherlap.sim.run;

import java.util.Map;
import weatherlap.sim.method.Method;

/**
 * One house as simulated.
 *
 * @param result what comes of it by each method alone
 * @param parts of any plan; holds draws of every opening, so that it is not kept for many houses
 * @param takeoffs what was drawn from, by method; not kept for many houses either
 */
public record SimulatedHouse(HouseResult result, PlanParts parts, Map<Method, HouseTakeoff> takeoffs) {}
