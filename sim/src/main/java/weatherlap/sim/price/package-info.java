/**
 * What does the shop ask, and what does it keep?
 *
 * <pre>
 * direct D = labour + material + permit + tipping + repairs under the warranty, expected
 * gross margin:        P = D / (1 − g − s)              g: margin on the price, not a mark-up on the cost
 * overhead and net:    P = (D + h · c) / (1 − n − s)    h: crew hours, c: overhead for each
 * gross profit = P · (1 − s) − D                        overhead is paid out of it
 *
 * symbol  meaning                                 unit      code
 * g       gross margin                            fraction  Scalar.GROSS_MARGIN
 * n       net profit                              fraction  Scalar.NET_PROFIT
 * s       reserve for service other than leaks    fraction  Scalar.SERVICE_RESERVE
 * c       overhead                                USD/h     Scalar.OVERHEAD_USD_PER_CREW_HOUR
 * </pre>
 *
 * <p>Money is never rounded here. Repairs under the warranty are chance × cost of a repair, discounted: they come from the leak model,
 * not from a share of the price.
 */
package weatherlap.sim.price;
