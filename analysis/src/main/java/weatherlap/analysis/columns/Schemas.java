package weatherlap.analysis.columns;

import java.util.List;

/** The tables that the commands write. */
public final class Schemas {
    private static final String METHOD = "full_flange or insert";

    /** One opening and method. */
    public static final Schema OPENINGS = new Schema(
            "openings.csv",
            "Openings",
            "One opening and method.",
            Columns.start()
                    .text("house_id", "house", "key of the house")
                    .text("elevation_id", "elevation", "key of the wall within the house")
                    .text("opening_id", "opening", "key of the opening within the wall")
                    .text("method", "method", METHOD)
                    .number("glass_existing_ft2", "glass today", "ft²", 2, "visible glass of the existing unit")
                    .number("glass_ft2", "glass after", "ft²", 2, "visible glass of the new unit")
                    .number("glass_lost_ft2", "glass lost", "ft²", 2, "glass today less glass after")
                    .number("glass_lost_pct", "glass lost", "%", 1, "glass lost as a share of the glass today")
                    .number(
                            "clear_width_in",
                            "clear width",
                            "in.",
                            2,
                            "net clear opening, width; 0 where nothing opens")
                    .number("clear_height_in", "clear height", "in.", 2, "net clear opening, height")
                    .number("clear_area_ft2", "clear area", "ft²", 2, "net clear opening, area")
                    .optionalText("code_flags", "code flags", "points of the code to look at, ; between them")
                    .number("order_width_in", "order width", "in.", 3, "width of the unit to order")
                    .number("order_height_in", "order height", "in.", 3, "height of the unit to order")
                    .spread(
                            "labour_minutes",
                            "labour",
                            "person-min",
                            1,
                            "labour at this opening, without what openings share")
                    .spread(
                            "material_usd",
                            "material",
                            "USD",
                            2,
                            "unit and material used at this opening, without the rest of opened packages")
                    .number(
                            "driving_rain_l_per_m2_year",
                            "driving rain",
                            "L/m² year",
                            1,
                            "wind-driven rain that reaches the opening under its eave")
                    .number(
                            "shelter_fraction",
                            "shelter",
                            "fraction",
                            3,
                            "share of the free driving rain that the overhang keeps off")
                    .number(
                            "water_past_first_line_l_per_year",
                            "water past the first line",
                            "L/year",
                            3,
                            "water that passes cladding and seals, mean over the horizon")
                    .number(
                            "leak_probability",
                            "leak probability",
                            "fraction",
                            4,
                            "chance of leak damage within the horizon")
                    .number("leak_score", "leak score", "0 to 100", 1, "leak probability in percent")
                    .number(
                            "leak_score_p10",
                            "leak score, 10 %",
                            "0 to 100",
                            1,
                            "the same over causes not known: one draw in ten is below")
                    .number("leak_score_p90", "leak score, 90 %", "0 to 100", 1, "nine draws in ten are below")
                    .optionalText(
                            "leak_causes",
                            "leak causes",
                            "lap faults with what each adds to the leak probability, largest first, ; between them")
                    .list());

    /** One elevation and method. */
    public static final Schema ELEVATIONS = new Schema(
            "elevations.csv",
            "Elevations",
            "One wall and method.",
            Columns.start()
                    .text("house_id", "house", "key of the house")
                    .text("elevation_id", "elevation", "key of the wall within the house")
                    .text("method", "method", METHOD)
                    .whole("openings", "openings", "windows in the wall")
                    .whole("panels_down", "panels down", "siding panels taken down and put back")
                    .number(
                            "driving_rain_l_per_m2_year",
                            "driving rain",
                            "L/m² year",
                            1,
                            "wind-driven rain on the openings, their mean")
                    .number(
                            "leak_score",
                            "leak score",
                            "0 to 100",
                            1,
                            "chance of leak damage at any opening of the wall within the horizon, in percent")
                    .number(
                            "labour_minutes_mean",
                            "labour, mean",
                            "person-min",
                            1,
                            "labour at the wall's openings and on what they share: mean of the draws")
                    .list());

    /** One house and method. */
    public static final Schema HOUSES = new Schema(
            "houses.csv",
            "Houses",
            "One house and method.",
            Columns.start()
                    .text("house_id", "house", "key of the house")
                    .text("label", "label", "what people call it")
                    .text("method", "method", METHOD)
                    .whole("openings", "openings", "windows in the house")
                    .number("glass_lost_ft2", "glass lost", "ft²", 2, "glass lost by all openings")
                    .number("glass_lost_pct", "glass lost", "%", 1, "glass lost as a share of the glass today")
                    .spread("labour_hours", "labour", "person-h", 2, "labour of the house, shared work once")
                    .whole("crew_days", "crew days", "working days of the crew")
                    .spread("material_usd", "material", "USD", 2, "units and material in whole packages")
                    .number("price_usd", "price", "USD", 2, "what the family pays")
                    .spread(
                            "cost_usd",
                            "cost",
                            "USD",
                            2,
                            "what the job costs the shop: labour, material, overhead, callbacks and service")
                    .number(
                            "gross_profit_per_crew_day_usd",
                            "gross profit a crew day",
                            "USD/day",
                            2,
                            "expected price less direct cost and service, for each crew day; overhead is paid out of it")
                    .number(
                            "leak_probability",
                            "leak probability",
                            "fraction",
                            4,
                            "chance of leak damage at any opening within the horizon")
                    .number("leak_score", "leak score", "0 to 100", 1, "leak probability in percent")
                    .number(
                            "expected_damage_usd",
                            "expected damage",
                            "USD",
                            2,
                            "repair of leak damage within the horizon, discounted, mean")
                    .spread(
                            "horizon_cost_usd",
                            "horizon cost",
                            "USD",
                            2,
                            "price, expected damage and glass lost over the horizon, discounted")
                    .text("preferred", "preferred", "yes where this method has the lower expected horizon cost")
                    .number(
                            "preferred_probability",
                            "preferred in",
                            "fraction",
                            3,
                            "share of draws in which this method has the lower horizon cost")
                    .optionalText("flags", "flags", "things to look at before the job, ; between them")
                    .list());

    /** One segment of a portfolio and method; in the workbook and summary.json only. */
    public static final Schema SEGMENTS = new Schema(
            "segments",
            "Segments",
            "One segment and method, means of an opening.",
            Columns.start()
                    .text("kind", "told apart by", "portfolio, or what openings are told apart by")
                    .text("segment", "segment", "what its openings have in common")
                    .text("method", "method", METHOD)
                    .whole("houses", "houses", "houses with at least one of its openings")
                    .whole("openings", "openings", "how many")
                    .number("glass_lost_pct", "glass lost", "%", 1, "glass lost as a share of the glass today")
                    .number(
                            "labour_minutes_mean",
                            "labour, mean",
                            "person-min",
                            1,
                            "labour at the opening and its share of its wall")
                    .number(
                            "driving_rain_l_per_m2_year",
                            "driving rain",
                            "L/m² year",
                            1,
                            "wind-driven rain on the opening")
                    .number(
                            "leak_score",
                            "leak score",
                            "0 to 100",
                            1,
                            "chance of leak damage at the opening within the horizon, in percent")
                    .number(
                            "horizon_cost_usd_mean",
                            "horizon cost, mean",
                            "USD",
                            2,
                            "its share of its house's horizon cost")
                    .whole(
                            "houses_for_full_flange",
                            "houses for full-flange",
                            "houses of these with the lower expected horizon cost under full-flange")
                    .list());

    /** One candidate for the default. */
    public static final Schema RULE = new Schema(
            "rule.csv",
            "Rule",
            "One way to choose the method.",
            Columns.start()
                    .text("rule", "rule", "always_full_flange, always_insert, rule, best_choice")
                    .optionalText("questions", "questions", "what is asked of a house, in words")
                    .number("expected_horizon_cost_usd", "expected horizon cost", "USD", 2, "mean over the houses")
                    .number("regret_usd", "regret", "USD", 2, "cost above the best choice for each house, mean")
                    .optionalNumber(
                            "held_out_regret_usd",
                            "held-out regret",
                            "USD",
                            2,
                            "the same on houses that the rule was not made from")
                    .number(
                            "share_full_flange",
                            "share full-flange",
                            "fraction",
                            3,
                            "houses for which it chooses full-flange")
                    .optionalNumber(
                            "stays_best_probability",
                            "stays best",
                            "fraction",
                            3,
                            "share of draws in which it is the cheapest of the rules")
                    .list());

    /** Driving rain at one bearing. */
    public static final Schema EXPOSURE = new Schema(
            "exposure.csv",
            "Exposure",
            "One bearing of a wall.",
            Columns.start()
                    .number(
                            "bearing_deg",
                            "bearing",
                            "°",
                            0,
                            "outward normal of the wall, degrees clockwise from north")
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

    /** The leaks of one house. */
    public static final Schema HOUSE_LEAKS = new Schema(
            "leaks.csv",
            "Leaks",
            "One opening and method, house by house, by bearing and storey.",
            Columns.start()
                    .text("house_id", "house", "key of the house")
                    .number(
                            "bearing_deg",
                            "bearing",
                            "°",
                            0,
                            "outward normal of the wall, degrees clockwise from north")
                    .whole("storey", "storey", "that the opening stands in, from 1")
                    .text("elevation_id", "elevation", "key of the wall within the house")
                    .text("opening_id", "opening", "key of the opening within the wall")
                    .text("method", "method", METHOD)
                    .number(
                            "driving_rain_l_per_m2_year",
                            "driving rain",
                            "L/m² year",
                            1,
                            "wind-driven rain that reaches the opening under its eave")
                    .number(
                            "shelter_fraction",
                            "shelter",
                            "fraction",
                            3,
                            "share of the free driving rain that the overhang keeps off")
                    .number(
                            "head_l_per_year",
                            "water at the head",
                            "L/year",
                            1,
                            "driving rain that runs down the wall to the head")
                    .number("jamb_l_per_year", "water at the jamb", "L/year", 1, "driving rain that reaches both jambs")
                    .number(
                            "sill_l_per_year",
                            "water at the sill",
                            "L/year",
                            1,
                            "driving rain that runs down the glass to the sill")
                    .number(
                            "corner_l_per_year",
                            "water at the corner",
                            "L/year",
                            1,
                            "driving rain that reaches the bottom corners")
                    .number(
                            "field_l_per_year",
                            "water at the field",
                            "L/year",
                            1,
                            "driving rain on the wall around the opening")
                    .number(
                            "leak_score",
                            "leak score",
                            "0 to 100",
                            1,
                            "chance of leak damage within the horizon, percent")
                    .number("leak_score_p10", "leak score, 10 %", "0 to 100", 1, "one draw in ten is below")
                    .number("leak_score_p90", "leak score, 90 %", "0 to 100", 1, "nine draws in ten are below")
                    .optionalText("cause_1", "first cause", "lap fault that adds most, with its share of the score")
                    .optionalText("cause_2", "second cause", "likewise")
                    .optionalText("cause_3", "third cause", "likewise")
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
                    .number("low_90", "low", "person-min", 2, "lower end of the 90 % interval")
                    .number("high_90", "high", "person-min", 2, "upper end of it")
                    .whole("jobs", "jobs", "records that say something about it")
                    .list());

    /** One job record that has hours. */
    public static final Schema JOB_FIT = new Schema(
            "job-fit.csv",
            "Job fit",
            "One job with person-hours.",
            Columns.start()
                    .text("job_id", "job", "key in the job records")
                    .text("method", "method", METHOD)
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
                    .optionalNumber("low_90", "low", "of the assumption", 4, "lower end of the 90 % interval")
                    .optionalNumber("high_90", "high", "of the assumption", 4, "upper end of it")
                    .list());

    /** All of them. */
    public static final List<Schema> ALL = List.of(
            OPENINGS,
            ELEVATIONS,
            HOUSES,
            SEGMENTS,
            RULE,
            EXPOSURE,
            HOUSE_LEAKS,
            LABOUR_FIT,
            JOB_FIT,
            DRIVERS,
            BREAKEVEN);

    private Schemas() {}
}
