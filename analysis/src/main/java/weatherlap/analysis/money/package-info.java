/**
 * Are our waste, our prices and our margin right? What jobs used, paid and were paid, beside what tables and estimates foresaw.
 *
 * <pre>
 * packages used   = F_i q k (1 + w)/z        item i: waste becomes (1 + w) F_i − 1, not below 0
 * paid a package  = G_i p                    its price becomes G_i p, the range drawn together as far as the jobs tell
 * paid for units  = U_m (base, rate)         method m: base and rate both times U_m
 * invoiced        = M D/(1 − g − s)          D by the hours and the material of the job: g becomes 1 − s − (1 − g − s)/M
 *
 * symbol      meaning                                          unit   from
 * F, G, U, M  factors, {@link weatherlap.analysis.money.Level} 1      job records
 * q, k, w, z  as in {@link weatherlap.sim.material}                   takeoff of the job, materials.csv
 * D, g, s     as in {@link weatherlap.sim.price}
 * </pre>
 *
 * <p>D holds labor with the road, material, permit and tipping of the job, and the repairs under the warranty that the tables expect of it,
 * as the price of a run does. A price index is not applied: prices are those of the records, whatever their year.
 */
package weatherlap.analysis.money;
