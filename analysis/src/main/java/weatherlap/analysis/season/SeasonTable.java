package weatherlap.analysis.season;

import java.util.List;
import java.util.stream.Stream;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.columns.LayoutBuilder;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.sim.method.Method;

/** {@code season.csv}: a row a way to choose, as assumed and with one assumption of the season at an end of its range. */
public final class SeasonTable {
    public static final Layout<SeasonRow> LAYOUT = layout();

    private SeasonTable() {}

    public static ResultTable of(SeasonStudy study) {
        return of(Stream.concat(study.rows().stream(), study.swept().stream()).toList());
    }

    /** No season: the portfolio has no window. */
    public static ResultTable of(List<SeasonRow> rows) {
        return ResultTable.of(LAYOUT, rows);
    }

    private static Layout<SeasonRow> layout() {
        LayoutBuilder<SeasonRow> layout = Layout.<SeasonRow>of(
                        "season.csv", "Season", "One way to choose the method, over the houses of a season.")
                .text("assumed", "assumed", "the season: as set, or with one assumption otherwise", SeasonRow::when)
                .text(
                        "way",
                        "way to choose",
                        "always_full_flange, always_full_frame, always_insert, rule, family_plans, best_mix",
                        row -> row.way().word())
                .whole("jobs_waiting", "jobs waiting", "houses that wait", row -> row.season()
                        .jobs())
                .whole("crew_days", "crew days", "dry working days of all crews", row -> row.season()
                        .crewDays())
                .number(
                        "crew_days_taken",
                        "crew days taken",
                        "days",
                        1,
                        "by the houses done, on mean days",
                        row -> row.outcome().crewDays())
                .spread("houses_done", "houses done", "", 1, "houses done in the season", row -> row.outcome()
                        .housesDone());
        for (Method method : Method.values()) {
            layout.number(
                    method.word() + "_houses",
                    method.label() + " houses",
                    "",
                    1,
                    "of them done all by " + method.label() + ", on mean days",
                    row -> row.done(method.word()));
        }
        return layout.number(
                        "mixed_houses",
                        "mixed houses",
                        "",
                        1,
                        "of them done by more than one method, on mean days",
                        row -> row.done("mixed"))
                .spread(
                        "gross_profit_usd",
                        "gross profit",
                        "USD",
                        0,
                        "of the houses done: price less direct cost and service; overhead is paid out of it",
                        row -> row.outcome().grossProfitUsd())
                .number(
                        "callbacks",
                        "callbacks owed",
                        "",
                        2,
                        "repairs that the warranty of these houses is expected to pay for, each at its present worth",
                        row -> row.outcome().callbacks())
                .number(
                        "family_horizon_cost_usd",
                        "families pay",
                        "USD",
                        2,
                        "mean cost over the years of a family whose house is done",
                        row -> row.outcome().familyUsd())
                .number(
                        "family_extra_usd",
                        "over their best plans",
                        "USD",
                        2,
                        "how much that is over the families' own best plans for the same houses",
                        row -> row.outcome().familyExtraUsd())
                .number(
                        "one_more_crew_usd",
                        "one more crew",
                        "USD",
                        0,
                        "gain in mean gross profit by one more crew, before that crew's overhead",
                        SeasonRow::oneMoreCrewUsd)
                .optionalNumber(
                        "crew_day_usd",
                        "price of a crew day",
                        "USD",
                        2,
                        "what one more crew day is worth under the best mix; 0 where days are left over",
                        SeasonRow::dayPriceUsd)
                .build();
    }
}
