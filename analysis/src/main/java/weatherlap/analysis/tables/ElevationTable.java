package weatherlap.analysis.tables;

import java.util.List;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.plan.Limit;
import weatherlap.sim.run.ElevationResult;

/** {@code elevations.csv}: one row an elevation and method, in the order of the portfolio. */
public final class ElevationTable {
    public static final Layout<InHouse<ElevationResult>> LAYOUT = Layout.<InHouse<ElevationResult>>of(
                    "elevations.csv", "Elevations", "One wall and method.")
            .house(InHouse::houseId)
            .elevation(ElevationTable::id)
            .method(row -> row.part().method())
            .whole("openings", "openings", "windows in the wall", row -> row.part()
                    .elevation()
                    .openings()
                    .size())
            .whole("panels_down", "panels down", "siding panels taken down and put back", row -> row.part()
                    .panelsDown())
            .drivingRain("wind-driven rain on the openings, their mean", row -> row.part()
                    .drivingRainLitresPerM2Year())
            .leakScore(
                    "chance of leak damage at any opening of the wall within the horizon, in percent",
                    row -> row.part().leakScore())
            .number(
                    "labour_minutes_mean",
                    "labour, mean",
                    "person-min",
                    1,
                    "labour at the wall's openings and on what they share: mean of the draws",
                    row -> row.part().labourMinutesMean())
            .closed(
                    "limits that close this method at the wall, ; between them",
                    row -> Limit.joined(
                            row.choice().closed().get(id(row)).get(row.part().method())))
            .yesNo(
                    "chosen",
                    "chosen",
                    "yes where the family's cheapest plan does the wall by this method",
                    row -> row.choice().family().byElevation().get(id(row))
                            == row.part().method())
            .build();

    private ElevationTable() {}

    public static ResultTable of(List<HouseChoice> choices) {
        return ResultTable.of(LAYOUT, InHouse.each(choices, choice -> choice.result().elevations().stream()));
    }

    private static String id(InHouse<ElevationResult> row) {
        return row.part().elevation().id();
    }
}
