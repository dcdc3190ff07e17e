/**
 * Are our labour rates right? Rates fitted to what jobs took, shrunk towards the tables.
 *
 * <pre>
 * y_j / m_j = Σ_s (x_js / m_j) β_s + e_j      e_j ~ N(0, s²)            a job's person-minutes
 * z̄_s = β_s (1 + ū_s + ē_s)                    {@link TimedSteps}         the mean of a step that was timed
 * β ~ N(μ, diag(σ²) + κ² μ μᵀ)                β ≥ 0                     the tables
 *
 * symbol  meaning                                                unit     from
 * y, x    minutes of a job; weight of a step in it               min, 1   job records, {@link weatherlap.datasets.jobs.JobWork}
 * m       minutes expected by the tables: noise grows with a job min
 * μ, σ    mean and standard deviation of a step's range          min      labour-steps.csv
 * κ       spread of the pace from shop to shop, all steps alike  fraction {@link CalibrationOptions}
 * s       noise of a job                                         fraction estimated
 * </pre>
 *
 * <p>The estimate is the mean of the posterior: ridge regression towards μ, with the precision of the ranges for its penalty, solved by
 * QR of the stacked system and, where a rate would fall below zero, by active-set non-negative least squares. With a flat prior it is
 * ordinary least squares. The noise is the scaled residual sum over (n − effective parameters), with a few jobs' worth of prior from
 * the scenario. Minutes that were timed are taken out of a job's total, so that nothing is counted twice.
 *
 * <p>Gross records are set aside before the fit: timings by {@link GrossTimings}, totals that contradict the timed minutes, and jobs beyond
 * the limit of the options in {@link HuberFit} on the log scale, in which none pulls harder than 1.345 spreads. What is left moves a rate
 * by no more than a residual at that limit.
 *
 * <p>Steps that always occur together cannot be told apart from totals: their sum is learnt, and shared among them by the width of
 * their ranges. A step that no job held moves only with the shop's pace. Intervals hold for shops like those of the prior; a shop far
 * from every range is pulled towards it.
 *
 * <p>How well the 90 % intervals keep their word ({@code CoverageStudy}, among the tests; shops drawn from the prior, seeds 1 to 200, 40 jobs each, a fifth
 * of them timed step by step): the bundled rows, 0.895 of the true rates lay inside (standard error 0.004); a shop of 13 steps, 0.924, a
 * little wide.
 *
 * @see "Lindley, Smith 1972, Journal of the Royal Statistical Society B 34(1) (Bayesian linear model); Hoerl, Kennard 1970,
 *     Technometrics 12(1) (ridge regression); Lawson, Hanson 1974, Solving Least Squares Problems, ch. 23 (non-negative)"
 */
package weatherlap.analysis.calibration;
