package weatherlap.analysis.tables;

import java.util.List;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.columns.TextParts;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.sim.run.OpeningResult;

/** {@code openings.csv}: one row an opening and method, in the order of the portfolio. */
public final class OpeningTable {
    public static final Layout<InHouse<OpeningResult>> LAYOUT = Layout.<InHouse<OpeningResult>>of(
                    "openings.csv", "Openings", "One opening and method.")
            .house(InHouse::houseId)
            .elevation(row -> row.part().elevation().id())
            .opening(row -> row.part().opening().id())
            .method(row -> row.part().method())
            .number(
                    "glass_existing_ft2",
                    "glass today",
                    "ft²",
                    2,
                    "visible glass of the existing unit",
                    row -> row.part().glassExistingFt2())
            .number("glass_ft2", "glass after", "ft²", 2, "visible glass of the new unit", row -> row.part()
                    .glassFt2())
            .number("glass_lost_ft2", "glass lost", "ft²", 2, "glass today less glass after", row -> row.part()
                    .glassLostFt2())
            .glassLostShare(row -> 100 * row.part().glassLostFraction())
            .number(
                    "clear_width_in",
                    "clear width",
                    "in.",
                    2,
                    "net clear opening, width; 0 where nothing opens",
                    row -> row.part().clearWidthIn())
            .number("clear_height_in", "clear height", "in.", 2, "net clear opening, height", row -> row.part()
                    .clearHeightIn())
            .number("clear_area_ft2", "clear area", "ft²", 2, "net clear opening, area", row -> row.part()
                    .clearAreaFt2())
            .optionalText(
                    "code_flags",
                    "code flags",
                    "points of the code to look at, ; between them",
                    (row, text) -> text.add(row.part().codeFlags()))
            .number("order_width_in", "order width", "in.", 3, "width of the unit to order", row -> row.part()
                    .orderWidthIn())
            .number("order_height_in", "order height", "in.", 3, "height of the unit to order", row -> row.part()
                    .orderHeightIn())
            .spread(
                    "labour_minutes",
                    "labor",
                    "person-min",
                    1,
                    "labor at this opening, without what openings share",
                    row -> row.part().labourMinutes())
            .spread(
                    "material_usd",
                    "material",
                    "USD",
                    2,
                    "unit and material used at this opening, without the rest of opened packages",
                    row -> row.part().materialUsd())
            .drivingRain(
                    "wind-driven rain that reaches the opening under its eave",
                    row -> row.part().exposure().litresPerM2Year())
            .shelter(row -> row.part().exposure().shelterFraction())
            .number(
                    "water_past_first_line_l_per_year",
                    "water past the first line",
                    "L/year",
                    3,
                    "water that passes cladding and seals, mean over the years looked at",
                    row -> row.part().waterPastFirstLineLitresPerYear())
            .leakProbability("chance of leak damage within the years looked at", row -> row.part()
                    .leakProbability())
            .leakScore(
                    "leak probability in percent", row -> row.part().leakScore().mean())
            .leakScoreRange("the same over causes not known: one run in ten is below", row -> row.part()
                    .leakScore())
            .optionalText(
                    "leak_causes",
                    "leak causes",
                    "lap faults with what each adds to the leak probability, largest first, ; between them",
                    (row, text) -> causes(row.part().leakCauses(), text))
            .text("planned_method", "planned", "method of this opening in the family's plan", row -> row.choice()
                    .family()
                    .method(row.part().elevation(), row.part().opening())
                    .word())
            .build();

    private OpeningTable() {}

    public static ResultTable of(List<HouseChoice> choices) {
        return rows(choices).table();
    }

    /** The same before it is filled. */
    public static ResultRows<InHouse<OpeningResult>> rows(List<HouseChoice> choices) {
        return new ResultRows<>(
                LAYOUT, InHouse.each(choices, choice -> choice.result().openings()));
    }

    private static void causes(List<OpeningResult.LeakCause> causes, TextParts text) {
        for (int i = 0; i < causes.size(); i++) {
            long tenThousandths = Math.round(causes.get(i).contribution() * 10_000);
            if (tenThousandths == 0) {
                break;
            }
            if (i > 0) {
                text.add(";");
            }
            text.add(causes.get(i).faultId());
            text.add(" ");
            text.add(tenThousandths / 10_000.0, 4);
        }
    }
}
