package weatherlap.analysis.columns;

/** The tables of a comparison: every opening, wall and house under both methods, and what is made of them. */
public final class Schemas {
    /** One opening and method. */
    public static final Schema OPENINGS = new Schema(
            "openings.csv",
            "Openings",
            "One opening and method.",
            Columns.start()
                    .house()
                    .elevation()
                    .opening()
                    .method()
                    .number("glass_existing_ft2", "glass today", "ft²", 2, "visible glass of the existing unit")
                    .number("glass_ft2", "glass after", "ft²", 2, "visible glass of the new unit")
                    .number("glass_lost_ft2", "glass lost", "ft²", 2, "glass today less glass after")
                    .glassLostShare()
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
                    .drivingRain("wind-driven rain that reaches the opening under its eave")
                    .shelter()
                    .number(
                            "water_past_first_line_l_per_year",
                            "water past the first line",
                            "L/year",
                            3,
                            "water that passes cladding and seals, mean over the horizon")
                    .leakProbability("chance of leak damage within the horizon")
                    .leakScore("leak probability in percent")
                    .leakScoreRange("the same over causes not known: one draw in ten is below")
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
                    .house()
                    .elevation()
                    .method()
                    .whole("openings", "openings", "windows in the wall")
                    .whole("panels_down", "panels down", "siding panels taken down and put back")
                    .drivingRain("wind-driven rain on the openings, their mean")
                    .leakScore("chance of leak damage at any opening of the wall within the horizon, in percent")
                    .number(
                            "labour_minutes_mean",
                            "labour, mean",
                            "person-min",
                            1,
                            "labour at the wall's openings and on what they share: mean of the draws")
                    .closed("limits that close this method at the wall, ; between them")
                    .text("chosen", "chosen", "yes where the family's cheapest plan does the wall by this method")
                    .list());

    /** One house and method. */
    public static final Schema HOUSES = new Schema(
            "houses.csv",
            "Houses",
            "One house and method.",
            Columns.start()
                    .house()
                    .text("label", "label", "what people call it")
                    .method()
                    .whole("openings", "openings", "windows in the house")
                    .number("glass_lost_ft2", "glass lost", "ft²", 2, "glass lost by all openings")
                    .glassLostShare()
                    .spread("labour_hours", "labour", "person-h", 2, "labour of the house, shared work once")
                    .whole("crew_days", "crew days", "working days of the crew")
                    .spread("material_usd", "material", "USD", 2, "units and material in whole packages")
                    .number("price_usd", "price", "USD", 2, "what the family pays")
                    .spread(
                            "cost_usd",
                            "cost",
                            "USD",
                            2,
                            "what the job costs the shop: labour, material, overhead, repairs under the warranty and service")
                    .number(
                            "gross_profit_per_crew_day_usd",
                            "gross profit a crew day",
                            "USD/day",
                            2,
                            "expected price less direct cost and service, for each crew day; overhead is paid out of it")
                    .leakProbability("chance of leak damage at any opening within the horizon")
                    .leakScore("leak probability in percent")
                    .number(
                            "expected_damage_usd",
                            "expected damage",
                            "USD",
                            2,
                            "repairs of leak damage within the horizon that the family pays, at present value, mean")
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
                    .number(
                            "plan_horizon_cost_usd_mean",
                            "horizon cost of the plan, mean",
                            "USD",
                            2,
                            "horizon cost of this method wherever no limit closes it, the other elsewhere: mean of the draws")
                    .closed("limits that close this method at a wall or more, ; between them")
                    .text(
                            "chosen",
                            "chosen",
                            "yes where the family's cheapest plan does the whole house by this method, part where it mixes both")
                    .text(
                            "shop_prefers",
                            "shop prefers",
                            "yes where this method earns the shop more for each crew day, if not closed at every wall")
                    .list());

    /** The leaks of one house. */
    public static final Schema HOUSE_LEAKS = new Schema(
            "leaks.csv",
            "Leaks",
            "One opening and method, house by house, by bearing and storey.",
            Columns.start()
                    .house()
                    .bearing()
                    .whole("storey", "storey", "that the opening stands in, from 1")
                    .elevation()
                    .opening()
                    .method()
                    .drivingRain("wind-driven rain that reaches the opening under its eave")
                    .shelter()
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
                    .leakScore("chance of leak damage within the horizon, percent")
                    .leakScoreRange("one draw in ten is below")
                    .optionalText("cause_1", "first cause", "lap fault that adds most, with its share of the score")
                    .optionalText("cause_2", "second cause", "likewise")
                    .optionalText("cause_3", "third cause", "likewise")
                    .list());

    /** One segment of a portfolio and method; in the workbook and summary.json only. */
    public static final Schema SEGMENTS = new Schema(
            "segments",
            "Segments",
            "One segment and method, means of an opening.",
            Columns.start()
                    .text("kind", "told apart by", "portfolio, or what openings are told apart by")
                    .text("segment", "segment", "what its openings have in common")
                    .method()
                    .whole("houses", "houses", "houses with at least one of its openings")
                    .whole("openings", "openings", "how many")
                    .glassLostShare()
                    .number(
                            "labour_minutes_mean",
                            "labour, mean",
                            "person-min",
                            1,
                            "labour at the opening and its share of its wall")
                    .drivingRain("wind-driven rain on the opening")
                    .leakScore("chance of leak damage at the opening within the horizon, in percent")
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

    private Schemas() {}
}
