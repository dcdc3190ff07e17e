package weatherlap.analysis.tables;

import java.util.List;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.plan.Limit;
import weatherlap.analysis.plan.Plan;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.MethodResult;

/** {@code houses.csv}: one row a house and method, in the order of the portfolio. */
public final class HouseTable {
    public static final Layout<InHouse<Method>> LAYOUT = Layout.<InHouse<Method>>of(
                    "houses.csv", "Houses", "One house and method.")
            .house(InHouse::houseId)
            .text("label", "label", "what people call it", row -> row.choice()
                    .result()
                    .house()
                    .label())
            .method(InHouse::part)
            .whole("openings", "openings", "windows in the house", row -> row.choice()
                    .result()
                    .house()
                    .openingCount())
            .number("glass_lost_ft2", "glass lost", "ft²", 2, "glass lost by all openings", row -> result(row)
                    .glassLostFt2())
            .glassLostShare(row -> 100 * result(row).glassLostFraction())
            .spread("labour_hours", "labor", "person-h", 2, "labor of the house, shared work once", row -> result(row)
                    .labourHours())
            .whole("crew_days", "crew days", "working days of the crew", row -> result(row)
                    .crewDays())
            .spread("material_usd", "material", "USD", 2, "units and material in whole packages", row -> result(row)
                    .materialUsd())
            .number("price_usd", "price", "USD", 2, "what the family pays", row -> result(row)
                    .priceUsd())
            .spread(
                    "cost_usd",
                    "cost",
                    "USD",
                    2,
                    "what the job costs the shop: labor, material, overhead, repairs under the warranty and service",
                    row -> result(row).costUsd())
            .number(
                    "gross_profit_per_crew_day_usd",
                    "gross profit a crew day",
                    "USD/day",
                    2,
                    "expected price less direct cost and service, for each crew day; overhead is paid out of it",
                    row -> result(row).grossProfitPerCrewDayUsd())
            .leakProbability("chance of leak damage at any opening within the years looked at", row -> result(row)
                    .leakProbability())
            .leakScore(
                    "leak probability in percent",
                    row -> result(row).leakScore().mean())
            .number(
                    "expected_damage_usd",
                    "expected damage",
                    "USD",
                    2,
                    "repairs of leak damage within the years looked at that the family pays, at present value, mean",
                    row -> result(row).expectedDamageUsd())
            .spread(
                    "horizon_cost_usd",
                    "cost over the years",
                    "USD",
                    2,
                    "price, expected damage and glass lost over the years, discounted",
                    row -> result(row).horizonCostUsd())
            .yesNo(
                    "preferred",
                    "preferred",
                    "yes where this method has the lower expected cost over the years",
                    row -> row.choice().result().cheapest() == row.part())
            .number(
                    "preferred_probability",
                    "preferred in",
                    "fraction",
                    3,
                    "share of runs in which this method has the lower cost over the years",
                    row -> row.choice().result().cheapestProbability(row.part()))
            .optionalText(
                    "flags",
                    "flags",
                    "things to look at before the job, ; between them",
                    (row, text) -> text.add(result(row).flags()))
            .number(
                    "plan_horizon_cost_usd_mean",
                    "cost over the years of the plan, mean",
                    "USD",
                    2,
                    "cost over the years of this method wherever no limit closes it, other methods elsewhere; where"
                            + " that is over the risk limit, of another method so done, else of the family's plan: mean of the runs",
                    row -> row.choice().wherever().get(row.part()).horizonCostUsd())
            .closed(
                    "limits that close this method at an opening or more, or all over, ; between them",
                    row -> Limit.joined(row.choice().closed(row.part())))
            .text(
                    "chosen",
                    "chosen",
                    "yes where the family's plan does the whole house by this method, part where it mixes methods",
                    row -> Plan.uses(row.choice().family().methods(), row.part()))
            .yesNo(
                    "shop_prefers",
                    "shop prefers",
                    "yes where this method earns the shop more for each crew day, if not closed at every opening",
                    row -> row.choice().shop() == row.part())
            .number(
                    "family_plan_price_usd",
                    "price of the family's plan",
                    "USD",
                    2,
                    "what the shop asks for it",
                    row -> plan(row).priceUsd())
            .number(
                    "family_plan_leak_probability",
                    "leak probability of the family's plan",
                    "fraction",
                    4,
                    "chance of leak damage at any opening within the years looked at",
                    row -> plan(row).leakProbability())
            .number(
                    "family_plan_horizon_cost_usd",
                    "cost over the years of the family's plan",
                    "USD",
                    2,
                    "price, leak damage and glass lost by it: mean of the runs",
                    row -> plan(row).horizonCostUsd())
            .yesNo(
                    "keeps_risk_limit",
                    "keeps the limit",
                    "no where no plan keeps the family's limit of leak damage",
                    row -> !row.choice().atRisk())
            .number(
                    "family_plan_loss_bound_usd",
                    "loss at most",
                    "USD",
                    2,
                    "most that a better plan could save; 0 where the family's plan is known to be the best",
                    row -> plan(row).lossBoundUsd())
            .build();

    private HouseTable() {}

    public static ResultTable of(List<HouseChoice> choices) {
        return rows(choices).table();
    }

    /** The same before it is filled. */
    public static ResultRows<InHouse<Method>> rows(List<HouseChoice> choices) {
        return new ResultRows<>(
                LAYOUT,
                InHouse.each(choices, choice -> choice.result().methods().keySet()));
    }

    private static MethodResult result(InHouse<Method> row) {
        return row.choice().result().method(row.part());
    }

    private static Plan plan(InHouse<Method> row) {
        return row.choice().family();
    }
}
