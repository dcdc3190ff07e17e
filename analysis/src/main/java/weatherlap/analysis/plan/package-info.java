/**
 * Which method for this house, for this window, and in whose interest?
 *
 * <p>A plan gives every opening of a house a method. The family's cost of a house over its horizon is price + expected leak damage +
 * worth of the glass lost ({@link weatherlap.sim.run.PlanParts}), its chance of leak damage 1 − mean over the draws of ∏ (1 − P_o), since
 * openings share causes. The family's choice is the cheapest plan whose chance keeps its limit; where none does, the least risky.
 *
 * <p>A limit of an opening closes a method there, where another method keeps it: no unit of it fits; a rotten frame cannot keep an insert;
 * an escape opening is lost. What cannot be built is asked before what may not be.
 *
 * <p>The search tries every plan of a wall with up to 12 openings, because siding to take down is a union over the openings and its cost
 * no sum over them ({@link WallOptions}), and combines the walls under what each method brings to the house. It is exact but for houses
 * with a wall of more openings, and for a search that is cut off; then {@link Plan#lossBoundUsd} says what a better plan could save at
 * most.
 *
 * <p>The shop's interest is gross profit for each day of a crew. Where it points to another method, the choice says what each side would
 * give up.
 */
package weatherlap.analysis.plan;
