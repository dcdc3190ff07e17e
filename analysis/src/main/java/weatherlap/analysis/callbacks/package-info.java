/**
 * How good is the level of the leak model for this shop? Jobs done and who called back, held against what the model expects.
 *
 * <pre>
 * n_m ~ Poisson(κ_m E_m)                      calls of method m                {@link weatherlap.analysis.callbacks.GammaPoisson}
 * E_m = Σ_i ∫₀^{T_i} λ_i(u) (1 − e^(−(T_i − u)/d)) du   expected by the model   {@link weatherlap.analysis.callbacks.LaggedExposure}
 * κ_m ~ Gamma(c, c/κ),  κ ~ Gamma(a, a)       methods pooled in part           {@link weatherlap.analysis.callbacks.LevelFit}
 *
 * symbol  meaning                                                     unit
 * κ_m, κ  calls over those that the model expects, by method, shared  1
 * λ_i(u)  damage a year at the openings of job i, by the model        1/year
 * T_i     years that job i was followed                               year
 * d       mean time from damage to the call                           year
 * a, c    1/variance of the priors: how far the tables may be off     1
 * </pre>
 *
 * <p>A job followed for a short time, sold on or lost counts for as long as it was followed (censored). The calls of one house are taken
 * to be independent given its facts; where laps are good or bad by house, the intervals are too narrow.
 */
package weatherlap.analysis.callbacks;
