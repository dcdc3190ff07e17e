/**
 * Which unknown drives an outcome, and what would it be worth to know it?
 *
 * <p>Factors X₁ … X_d are independent and uniform on (0, 1); the model turns them into rates by their quantile functions. For an
 * outcome Y = f(X) and a group u of factors:
 *
 * <table>
 * <caption>Quantities</caption>
 * <tr><th>symbol</th><th>meaning</th><th>code</th></tr>
 * <tr><td>S_u = Var E(Y | X_u) / Var Y</td><td>share of the variance that goes when u is known</td><td>{@code firstOrder}</td></tr>
 * <tr><td>T_u = E Var(Y | X_∖u) / Var Y</td><td>share that stays when all but u is known</td><td>{@code total}</td></tr>
 * <tr><td>swing</td><td>Y with u low and with u high, the rest in the middle</td><td>{@code Swing}</td></tr>
 * <tr><td>EVPPI</td><td>what knowing a value before a choice of two is worth</td><td>{@code PartialInformation}</td></tr>
 * </table>
 *
 * <p>Holds for independent factors. S_u ≤ T_u, and they are equal where u acts with no other factor. An estimate may fall a few
 * of its errors outside [0, 1].
 */
package weatherlap.analysis.sensitivity;
