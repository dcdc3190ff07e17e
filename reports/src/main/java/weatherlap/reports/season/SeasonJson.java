package weatherlap.reports.season;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weatherlap.analysis.season.SeasonRow;
import weatherlap.analysis.season.SeasonStudy;
import weatherlap.analysis.words.Decimals;
import weatherlap.sim.run.Summary;

/** The season as {@code summary.json} has it. */
public final class SeasonJson {
    private SeasonJson() {}

    /** Names and values. */
    public static Map<String, Object> of(SeasonStudy study) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("crews", study.season().crews());
        json.put("weeks", study.season().weeks());
        json.put("days_per_week", study.season().daysPerWeek());
        study.season().rainShare().ifPresent(share -> json.put("rain_share_of_days", Decimals.rounded(share, 4)));
        json.put("crew_days", study.season().crewDays());
        json.put("jobs_waiting", study.season().jobs());
        json.put("crew_day_usd", Decimals.rounded(study.dayPrice().usd(), 2));
        json.put(
                "most_that_any_mix_could_earn_usd",
                Decimals.rounded(study.dayPrice().boundUsd(), 2));
        List<Object> ways = new ArrayList<>();
        study.rows().forEach(row -> ways.add(row(row)));
        json.put("ways", ways);
        return json;
    }

    private static Map<String, Object> row(SeasonRow row) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("way", row.way().word());
        json.put("houses_done", spread(row.outcome().housesDone(), 1));
        json.put("gross_profit_usd", spread(row.outcome().grossProfitUsd(), 0));
        json.put("callbacks", Decimals.rounded(row.outcome().callbacks(), 2));
        json.put("family_horizon_cost_usd", Decimals.rounded(row.outcome().familyUsd(), 2));
        json.put("family_extra_usd", Decimals.rounded(row.outcome().familyExtraUsd(), 2));
        json.put("one_more_crew_usd", Decimals.rounded(row.oneMoreCrewUsd(), 0));
        Map<String, Object> by = new LinkedHashMap<>();
        row.outcome().byMethod().forEach((method, houses) -> by.put(method, Decimals.rounded(houses, 1)));
        json.put("houses_by_method", by);
        json.put("houses_left", Decimals.rounded(row.left(), 1));
        return json;
    }

    private static Map<String, Object> spread(Summary summary, int decimals) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("mean", Decimals.rounded(summary.mean(), decimals));
        json.put("p10", Decimals.rounded(summary.p10(), decimals));
        json.put("p50", Decimals.rounded(summary.p50(), decimals));
        json.put("p90", Decimals.rounded(summary.p90(), decimals));
        return json;
    }
}
