package weatherlap.reports.owner;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import weatherlap.analysis.plan.Limit;
import weatherlap.analysis.words.Decimals;
import weatherlap.reports.owner.OwnerFigures.OwnHouse;
import weatherlap.sim.method.Method;

/** The numbers of the two pages for programs. */
public final class OwnerJson {
    private final OwnerFigures figures;

    public OwnerJson(OwnerFigures figures) {
        this.figures = figures;
    }

    /** Names and values. */
    public Map<String, Object> map() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("horizon_years", figures.years());
        json.put("default_wins", wins(figures.answer().keeping(), figures.keepingEachUsd()));
        json.put("other_wins", wins(figures.answer().departures(), figures.departingEachUsd()));
        json.put("even_price", even());
        json.put("houses_with_a_stand_in", figures.answer().standIns());
        json.put("houses_closed_at_a_window", closed());
        json.put("houses_by_who_gains", gains());
        json.put("rule", rule());
        json.put("window_by_window_saves_usd_per_house", usd(figures.mixingSavesUsd()));
        json.put("likeliest_leak", leak());
        json.put("repair_usd", turning(figures.repairUsd(), figures.evenRepairUsd()));
        json.put("glass_usd_per_ft2_year", turning(figures.glassUsdPerFt2Year(), figures.evenGlassUsd()));
        json.put(
                "departing_houses",
                figures.departing().stream()
                        .limit(MondaySection.MOST_NAMED)
                        .map(this::house)
                        .toList());
        return json;
    }

    private static Map<String, Object> wins(int houses, double usd) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("houses", houses);
        json.put("saves_usd_per_house", usd(usd));
        return json;
    }

    private Map<String, Object> even() {
        Method usual = figures.usual();
        Method other = figures.other();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("method", figures.even().raised().word());
        json.put("against", figures.even().other().word());
        json.put("more_usd_per_house", usd(figures.even().perHouseUsd()));
        json.put("more_usd_per_window", usd(figures.even().perWindowUsd()));
        json.put("price_usd_per_house", usd(figures.even().priceUsd()));
        json.put("default_earns_more_usd_per_crew_day", usd(figures.perDayUsd(usual) - figures.perDayUsd(other)));
        json.put(
                "default_earns_more_usd_per_house",
                usd(figures.answer().of(usual).grossProfitUsd()
                        - figures.answer().of(other).grossProfitUsd()));
        json.put("family_saves_after_raising_default_usd", usd(figures.keptAfterRaiseUsd()));
        figures.inSeason().ifPresent(season -> {
            json.put("season_crew_day_usd", usd(season.crewDayUsd()));
            json.put("season_more_usd_per_house", usd(season.perHouseUsd()));
            json.put("season_more_usd_per_window", usd(figures.perWindowUsd(season)));
        });
        return json;
    }

    private Map<String, Object> closed() {
        Map<String, Object> json = new LinkedHashMap<>();
        for (Method method : figures.answer().contrast().both()) {
            Map<String, Object> limits = new LinkedHashMap<>();
            for (Limit limit : Limit.values()) {
                limits.put(limit.word(), figures.closed(method, limit));
            }
            json.put(method.word(), limits);
        }
        return json;
    }

    private Map<String, Object> gains() {
        Map<String, Object> json = new LinkedHashMap<>();
        for (Method family : figures.answer().contrast().both()) {
            for (Method shop : figures.answer().contrast().both()) {
                json.put(
                        "family_" + family.word() + "_shop_" + shop.word(),
                        figures.withChoice().stream()
                                .filter(house -> house.better() == family && house.earnsMore() == shop)
                                .count());
            }
        }
        return json;
    }

    private Map<String, Object> rule() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("lines", figures.decision().study().rule().lines());
        json.put("costs_more_than_best_usd_per_house", usd(figures.ruleCostsMoreUsd()));
        return json;
    }

    private Map<String, Object> leak() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("fault", figures.leak().cause().orElse(""));
        json.put("openings", figures.leak().openings());
        json.put("of_openings", figures.leak().of());
        return json;
    }

    private static Map<String, Object> turning(double assumed, OptionalDouble even) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("assumed", usd(assumed));
        even.ifPresent(value -> json.put("where_both_cost_the_same", usd(value)));
        return json;
    }

    private Map<String, Object> house(OwnHouse house) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("house_id", house.choice().result().house().id());
        json.put("label", house.choice().result().house().label());
        json.put("storeys", house.choice().result().house().storeys());
        json.put("shortest_overhang_in", Decimals.rounded(house.shortestOverhangIn(), 2));
        json.put("family_saves_usd", usd(Math.abs(house.familySavesUsd())));
        json.put("price_drops_usd", usd(figures.priceDropsUsd(house)));
        json.put("leaks_and_glass_cost_more_usd", usd(figures.priceDropsUsd(house) - Math.abs(house.familySavesUsd())));
        json.put("leak_probability_by_default", Decimals.rounded(figures.leakProbability(house, figures.usual()), 4));
        json.put("leak_probability_by_other", Decimals.rounded(figures.leakProbability(house, figures.other()), 4));
        json.put("keeps_risk_limit_by_other", !figures.isTooRisky(house));
        json.put("shop_gains_usd_per_crew_day", usd(figures.shopGainsUsd(house)));
        return json;
    }

    private static BigDecimal usd(double usd) {
        return Decimals.rounded(usd, 2);
    }
}
