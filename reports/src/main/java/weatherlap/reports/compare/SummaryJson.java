package weatherlap.reports.compare;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weatherlap.analysis.columns.ResultColumn;
import weatherlap.analysis.season.SeasonStudy;
import weatherlap.analysis.tables.Answer;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.analysis.words.Decimals;
import weatherlap.reports.format.Content;
import weatherlap.reports.format.Json;
import weatherlap.reports.owner.OwnerFigures;
import weatherlap.reports.owner.OwnerJson;
import weatherlap.reports.season.SeasonJson;
import weatherlap.sim.method.Method;

/** {@code summary.json}: the portfolio and its segments for programs. Rates are fractions, money is USD. */
final class SummaryJson {
    private SummaryJson() {}

    static Content of(OwnerFigures figures, ResultTable segments, Optional<SeasonStudy> season) {
        Answer answer = figures.answer();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("houses", answer.houses());
        json.put("openings", answer.openings());
        json.put("draws", figures.runs());
        json.put("default_method", answer.cheaper().word());
        json.put("default_probability", Decimals.rounded(answer.probability(), 4));
        Map<String, Object> saved = new LinkedHashMap<>();
        saved.put("mean", usd(answer.savedPerHouseUsd().mean()));
        saved.put("p10", usd(answer.savedPerHouseUsd().p10()));
        saved.put("p50", usd(answer.savedPerHouseUsd().p50()));
        saved.put("p90", usd(answer.savedPerHouseUsd().p90()));
        json.put("default_saves_usd_per_house", saved);
        json.put("houses_that_depart", answer.departures());
        json.put("departing_saves_usd", usd(answer.savedByDepartingUsd()));
        json.put("houses_held_back_by_limits", answer.heldBack());
        Map<String, Object> methods = new LinkedHashMap<>();
        for (Method method : answer.contrast().both()) {
            methods.put(method.word(), perHouse(answer.of(method)));
        }
        json.put("mean_of_a_house", methods);
        json.put("family_plans", plans(answer.plans()));
        season.ifPresent(study -> json.put("season", SeasonJson.of(study)));
        json.putAll(new OwnerJson(figures).map());
        json.put("segments", rows(segments));
        return Json.of(json);
    }

    private static Map<String, Object> plans(Answer.FamilyPlans plans) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("price_usd", usd(plans.priceUsd()));
        json.put("leak_probability", Decimals.rounded(plans.anyLeak(), 4));
        json.put("horizon_cost_usd_mean", usd(plans.horizonCostUsd()));
        json.put("houses_mixed", plans.mixed());
        json.put("houses_with_one_plan", plans.single());
        json.put("houses_over_risk_limit", plans.atRisk());
        return json;
    }

    private static Map<String, Object> perHouse(Answer.PerHouse house) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("price_usd", usd(house.priceUsd()));
        json.put("cost_usd_mean", usd(house.costUsd()));
        json.put("gross_profit_per_crew_day_usd", usd(house.grossProfitPerCrewDayUsd()));
        json.put("labour_hours_mean", Decimals.rounded(house.labourHours(), 2));
        json.put("crew_days", Decimals.rounded(house.crewDays(), 2));
        json.put("glass_lost_fraction", Decimals.rounded(house.glassLostFraction(), 4));
        json.put("leak_probability", Decimals.rounded(house.anyLeak(), 4));
        json.put("expected_damage_usd", usd(house.expectedDamageUsd()));
        json.put("horizon_cost_usd_mean", usd(house.horizonCostUsd()));
        json.put("gross_profit_usd", usd(house.grossProfitUsd()));
        json.put("plan_horizon_cost_usd_mean", usd(house.planHorizonCostUsd()));
        return json;
    }

    private static List<Map<String, Object>> rows(ResultTable table) {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (int row = 0; row < table.rows(); row++) {
            Map<String, Object> json = new LinkedHashMap<>();
            for (ResultColumn<?> column : table.layout().columns()) {
                json.put(
                        column.name(),
                        column.kind() == ResultColumn.Kind.TEXT
                                ? table.text(row, column.name())
                                : Decimals.rounded(table.number(row, column).orElseThrow(), column.decimals()));
            }
            rows.add(json);
        }
        return rows;
    }

    private static BigDecimal usd(double usd) {
        return Decimals.rounded(usd, 2);
    }
}
