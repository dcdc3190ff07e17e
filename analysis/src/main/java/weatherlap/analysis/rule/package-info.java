/**
 * Which default can a shop hang on the wall?
 *
 * <p>A case (a house, or a wall of one) has facts that a measurer sees and a cost under each method. A rule is a tree of at most
 * three questions on the facts, each answered yes or no, with a method at every end. With d_i the mean cost of the full flange less
 * that of the insert at case i, and F the cases that a rule sends to the full flange:
 *
 * <pre>
 *   cost(rule) = (Σ insert_i + Σ_{i in F} d_i) / n        regret(rule) = cost(rule) − (Σ insert_i + Σ min(d_i, 0)) / n
 * </pre>
 *
 * Every tree over the candidate questions is tried, so the rule found has the least regret there is. It is judged on cases that it
 * was not found on (k folds), and gives way to a shorter one whose held-out regret is worse by no more than 1.645 standard errors of the
 * difference, case by case: such a difference comes by chance once in twenty.
 *
 * <p>Where a limit leaves one method only, give the case that method's cost and a difference of 0: every rule then treats it alike.
 *
 * @see "Breiman, Friedman, Olshen, Stone 1984, Classification and Regression Trees, section 3.4.3 (a simpler tree within the error of
 *     the best; their unpaired single error is replaced by a paired test, which is sharper)"
 */
package weatherlap.analysis.rule;
