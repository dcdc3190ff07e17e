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
                    "chance of leak damage at any opening of the wall within the years looked at, in percent",
                    row -> row.part().leakScore())
            .number(
                    "labour_minutes_mean",
                    "labor, mean",
                    "person-min",
                    1,
                    "labor at the wall's openings and on what they share: mean of the runs",
                    row -> row.part().labourMinutesMean())
            .closed(
                    "limits that close this method at an opening of the wall or more, ; between them",
                    row -> Limit.joined(row.choice()
                            .closed(row.part().elevation(), row.part().method())))
            .text(
                    "chosen",
                    "chosen",
                    "yes where the family's plan does the wall by this method, part where it mixes methods",
                    row -> row.choice()
                            .family()
                            .wall(row.part().elevation())
                            .uses(row.part().method()))
            .build();

    private ElevationTable() {}

    public static ResultTable of(List<HouseChoice> choices) {
        return rows(choices).table();
    }

    /** The same before it is filled. */
    public static ResultRows<InHouse<ElevationResult>> rows(List<HouseChoice> choices) {
        return new ResultRows<>(
                LAYOUT, InHouse.each(choices, choice -> choice.result().elevations()));
    }

    private static String id(InHouse<ElevationResult> row) {
        return row.part().elevation().id();
    }
}
