package weatherlap.analysis.columns;

/** The tables of the studies: exposure, calibration, drivers and break-even. */
public final class StudySchemas {
    /** Driving rain at one bearing. */
    public static final Schema EXPOSURE = new Schema(
            "exposure.csv",
            "Exposure",
            "One bearing of a wall.",
            Columns.start()
                    .bearing()
                    .number(
                            "airfield_index_l_per_m2_year",
                            "airfield index",
                            "L/m² year",
                            4,
                            "driving rain in open country at 10 m, ISO 15927-3")
                    .number(
                            "ashrae_index_l_per_m2_year",
                            "ASHRAE index",
                            "L/m² year",
                            4,
                            "rain deposited by ASHRAE 160 with F_E = F_D = 1")
                    .number("worst_spell_l_per_m2", "worst spell", "L/m²", 4, "largest spell on file, ISO 15927-3")
                    .whole("wet_hours", "wet hours", "hours on file in which rain is driven on the wall")
                    .list());

    /** One labour step fitted. */
    public static final Schema LABOUR_FIT = new Schema(
            "labour-fit.csv",
            "Labour fit",
            "One labour step.",
            Columns.start()
                    .text("step_id", "step", "key in labour-steps.csv")
                    .number("prior_minutes", "before", "person-min", 2, "for one unit of the driver, as assumed")
                    .number("fitted_minutes", "fitted", "person-min", 2, "the same with the jobs weighed in")
                    .interval("person-min", 2, false)
                    .whole("jobs", "jobs", "records that say something about it")
                    .list());

    /** One job record that has hours. */
    public static final Schema JOB_FIT = new Schema(
            "job-fit.csv",
            "Job fit",
            "One job with person-hours.",
            Columns.start()
                    .text("job_id", "job", "key in the job records")
                    .method()
                    .optionalText("crew", "crew", "as in the job records")
                    .number("actual_hours", "took", "person-h", 2, "as in the job records")
                    .number("prior_hours", "by the tables", "person-h", 2, "by the minutes as assumed")
                    .number("fitted_hours", "fitted", "person-h", 2, "by the fitted minutes")
                    .number("residual_fraction", "left over", "fraction", 3, "hours taken over hours fitted, less 1")
                    .number(
                            "robust_deviations",
                            "deviations",
                            "",
                            2,
                            "what a robust fit leaves over, in its robust standard deviations")
                    .text("set_aside", "set aside", "yes where the job is too far from the others to be fitted")
                    .list());

    /** One assumption and outcome. */
    public static final Schema DRIVERS = new Schema(
            "drivers.csv",
            "Drivers",
            "One assumption and outcome.",
            Columns.start()
                    .text("assumption", "assumption", "name of a scalar, or table and row")
                    .text("outcome", "outcome", "cost_difference or risk_difference")
                    .optionalNumber(
                            "first_order",
                            "first order",
                            "fraction",
                            4,
                            "Sobol' index: share of the variance that knowing it alone removes; empty: not asked by itself")
                    .optionalNumber("first_order_error", "error", "fraction", 4, "standard error of it")
                    .optionalNumber("total", "total", "fraction", 4, "Sobol' index with all interactions")
                    .optionalNumber("total_error", "error", "fraction", 4, "standard error of it")
                    .number(
                            "swing_low",
                            "low",
                            "of the outcome",
                            4,
                            "outcome with the assumption at its 10 % point, the rest at their medians")
                    .number("swing_high", "high", "of the outcome", 4, "likewise at its 90 % point")
                    .optionalNumber(
                            "value_of_information_usd",
                            "worth of knowing",
                            "USD",
                            2,
                            "what knowing it would save, at most, a house")
                    .list());

    /** Where the preferred method changes. */
    public static final Schema BREAKEVEN = new Schema(
            "breakeven.csv",
            "Break-even",
            "One house or segment and the assumption varied.",
            Columns.start()
                    .text("name", "name", "what was varied")
                    .text("preferred_below", "below", "method preferred below the value")
                    .text("preferred_above", "above", "method preferred above it")
                    .optionalNumber(
                            "value",
                            "value",
                            "of the assumption",
                            4,
                            "where the two cost the same; empty: nowhere in the range")
                    .interval("of the assumption", 4, true)
                    .list());

    private StudySchemas() {}
}
