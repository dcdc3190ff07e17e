/**
 * Are our labour rates right? Rates fitted to what jobs took, shrunk towards the tables, and how fast each crew is.
 *
 * <pre>
 * y_j = f_j g_j (1 + e_j)      f_j = Σ_s w_js β_s,  g_j = exp(a_c(j) + δ t_j)      a job's person-minutes, {@link Totals}
 * z_js = β_s g_j (1 + u_j + e_js)                                                   a step that was timed, {@link TimedSteps}
 * β ~ N(μ, diag(σ²) + κ² μ μᵀ), β ≥ 0      a ~ N(0, τ²)      δ ~ N(0, d²)           what is believed before
 *
 * symbol  meaning                                                unit     from
 * y, w    minutes of a job; weight of a step in it               min, 1   job records, {@link weatherlap.datasets.jobs.JobWork}
 * μ, σ    mean and standard deviation of a step's range          min      labour-steps.csv
 * κ       spread of the pace from shop to shop, all steps alike  fraction {@link CalibrationOptions}
 * a, τ    log pace of a crew; spread from crew to crew           1        fitted, {@link CrewPace}
 * δ, t    drift of the log pace; time after the last job         1/a, a   fitted, {@link Drift}; job records
 * s       coefficient of variation of e                          fraction estimated
 * </pre>
 *
 * <p>The model is made linear about the last guess until it settles ({@link Fitter}), each equation over what the guess foresees, so that
 * noise grows with the job. The root of these equations is ridge regression towards μ, with the precision of the ranges for its penalty, solved by QR of the stacked system and, where a rate would fall below zero, by active-set non-negative least squares. With a
 * flat prior it is ordinary least squares. Such a root is the peak of what is believed. The estimate is its mean, which lies higher
 * ({@link weatherlap.analysis.regression.Bend}): prices and days are sums over rates, so that only the mean makes them neither high nor low over many jobs. Rates are
 * fitted for the mean of the crews on the middle of the days, where they are known apart from paces and drift. Equations are turned into a {@link weatherlap.analysis.regression.Triangle} as they come, so that memory holds the jobs and
 * nothing that grows faster. The noise is the scaled residual sum over (n − effective parameters), with a few jobs' worth of prior from
 * the scenario. Minutes that were timed are taken out of a job's total, so that nothing is counted twice. A job counts for 2^(−age/half-life)
 * jobs of today.
 *
 * <p>Rates are those of the {@link weatherlap.analysis.regression.OrdinaryCrew} on the day of the last job: a slow crew shows in its own pace and not in every rate.
 *
 * <p>Gross records are set aside before the fit: timings by {@link GrossTimings}, totals that contradict the timed minutes, and jobs beyond
 * the limit of the options in {@link weatherlap.analysis.regression.HuberFit} on the log scale, in which none pulls harder than 1.345 spreads. What is left moves a rate
 * by no more than a residual at that limit.
 *
 * <p>Steps that always occur together cannot be told apart from totals: their sum is learnt, and shared among them by the width of
 * their ranges. A step that no job held moves only with the shop's pace. Intervals hold for shops like those of the prior; a shop far
 * from every range is pulled towards it. How well they keep their word: {@code RecoveryStudy}, among the tests, and its table in
 * {@code analysis/README.md}.
 *
 * @see "Lindley, Smith 1972, Journal of the Royal Statistical Society B 34(1) (Bayesian linear model); Hoerl, Kennard 1970,
 *     Technometrics 12(1) (ridge regression); Lawson, Hanson 1974, Solving Least Squares Problems, ch. 23 (non-negative)"
 */
package weatherlap.analysis.calibration;
