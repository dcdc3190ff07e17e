/**
 * How likely is it that a thing fails, when it fails through combinations of simpler failures?
 *
 * <p>A {@link weatherlap.sim.probability.FaultTree} combines independent basic events by gates: OR (1 − ∏(1 − p) for unshared inputs), AND
 * (∏ p) and at-least-k-of-n. A basic event may stand in many places of a tree; {@link weatherlap.sim.probability.ExactProbability} is exact
 * then too, since it sums over a binary decision diagram. {@link weatherlap.sim.probability.MinimalCutSets} lists the smallest
 * combinations that suffice. Trees are coherent: there is no NOT gate, so that one more failure never helps.
 *
 * @see "NUREG-0492, Fault Tree Handbook, US NRC 1981 (gates, minimal cut sets)"
 * @see "Bryant 1986, IEEE Transactions on Computers C-35(8) (the decision diagram); Rauzy 1993, Reliability Engineering and System Safety
 *     40(3) (its use for fault trees)"
 */
package weatherlap.sim.probability;
