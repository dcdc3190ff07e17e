/**
 * Which method for this house, for this wall, and in whose interest?
 *
 * <p>The family's cost of a house over its horizon is price + expected leak damage + worth of the glass lost ({@link
 * weatherlap.sim.run}). The family's choice is the cheapest of three plans: one method or the other wherever a limit lets it, and the
 * cheaper method at every wall. A limit closes a method at a wall only where the other method keeps it:
 *
 * <ul>
 *   <li>an escape opening is lost by this method and not by the other;
 *   <li>a rotten frame cannot keep an insert;
 *   <li>no unit of this method fits;
 *   <li>the chance of leak damage in the house is over the family's limit, and under it with the other method.
 * </ul>
 *
 * <p>Where each method breaks a limit that the other keeps, neither is closed.
 *
 * <p>The shares of a house's cost that its walls carry are those of a house done by one method. A second method on the same house
 * brings its own set-up; the part of each method's set-up that the shares do not carry is added ({@link
 * weatherlap.sim.run.MethodResult#setupUsd}). Savings of scale that two half-jobs lose (learning, packing of days) are not.
 *
 * <p>The shop's interest is gross profit for each day of a crew. Where it points to the other method, the choice says what each side
 * would give up.
 */
package weatherlap.analysis.plan;
