package weatherlap.analysis.leaks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.columns.LayoutBuilder;
import weatherlap.analysis.columns.TextParts;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.tables.InHouse;
import weatherlap.analysis.tables.ResultRows;
import weatherlap.analysis.tables.ResultTable;
import weatherlap.sim.assumptions.Joint;
import weatherlap.sim.run.OpeningResult;
import weatherlap.sim.run.OpeningResult.LeakCause;

/** {@code leaks.csv}: house by house, opening by opening under each method, by the bearing of the wall, then by storey. */
public final class HouseLeakTable {
    public static final Layout<InHouse<OpeningResult>> LAYOUT = layout();

    private HouseLeakTable() {}

    /** House by house. */
    public static ResultTable of(List<HouseChoice> choices) {
        return rows(choices).table();
    }

    /** The same before it is filled. */
    public static ResultRows<InHouse<OpeningResult>> rows(List<HouseChoice> choices) {
        List<InHouse<OpeningResult>> rows = new ArrayList<>();
        for (HouseChoice choice : choices) {
            int first = rows.size();
            for (OpeningResult opening : choice.result().openings()) {
                rows.add(new InHouse<>(choice, opening));
            }
            rows.subList(first, rows.size()).sort(HouseLeakTable::compare);
        }
        return new ResultRows<>(LAYOUT, rows);
    }

    private static Layout<InHouse<OpeningResult>> layout() {
        LayoutBuilder<InHouse<OpeningResult>> layout = Layout.<InHouse<OpeningResult>>of(
                        "leaks.csv", "Leaks", "One opening and method, house by house, by bearing and story.")
                .house(InHouse::houseId)
                .bearing(HouseLeakTable::bearingDeg)
                .whole("storey", "story", "that the opening stands in, from 1", HouseLeakTable::storey)
                .elevation(row -> row.part().elevation().id())
                .opening(row -> row.part().opening().id())
                .method(row -> row.part().method())
                .drivingRain(
                        "wind-driven rain that reaches the opening under its eave",
                        row -> row.part().exposure().litresPerM2Year())
                .shelter(row -> row.part().exposure().shelterFraction());
        water(layout, Joint.HEAD, "driving rain that runs down the wall to the head");
        water(layout, Joint.JAMB, "driving rain that reaches both jambs");
        water(layout, Joint.SILL, "driving rain that runs down the glass to the sill");
        water(layout, Joint.CORNER, "driving rain that reaches the bottom corners");
        water(layout, Joint.FIELD, "driving rain on the wall around the opening");
        return layout.leakScore(
                        "chance of leak damage within the years looked at, percent",
                        row -> row.part().leakScore().mean())
                .leakScoreRange("one run in ten is below", row -> row.part().leakScore())
                .optionalText(
                        "cause_1",
                        "first cause",
                        "lap fault that adds most, with its share of the score",
                        (row, text) -> cause(row, 0, text))
                .optionalText("cause_2", "second cause", "the next", (row, text) -> cause(row, 1, text))
                .optionalText("cause_3", "third cause", "the third", (row, text) -> cause(row, 2, text))
                .build();
    }

    private static void water(LayoutBuilder<InHouse<OpeningResult>> layout, Joint joint, String meaning) {
        String name = joint.name().toLowerCase(Locale.ROOT);
        layout.number(name + "_l_per_year", "water at the " + name, "L/year", 1, meaning, row -> row.part()
                .exposure()
                .litresPerYear(joint));
    }

    private static int compare(InHouse<OpeningResult> one, InHouse<OpeningResult> other) {
        int byBearing = Double.compare(bearingDeg(one), bearingDeg(other));
        return byBearing != 0 ? byBearing : Integer.compare(storey(one), storey(other));
    }

    private static double bearingDeg(InHouse<OpeningResult> row) {
        return row.part().elevation().bearingDeg();
    }

    private static int storey(InHouse<OpeningResult> row) {
        return row.choice()
                .result()
                .house()
                .storeyOf(row.part().elevation(), row.part().opening());
    }

    private static void cause(InHouse<OpeningResult> row, int place, TextParts text) {
        OpeningResult opening = row.part();
        if (place >= opening.leakCauses().size()
                || opening.leakCauses().get(place).contribution() == 0) {
            return;
        }
        LeakCause cause = opening.leakCauses().get(place);
        text.add(cause.tradeName());
        text.add(": ");
        text.add(Math.round(100 * cause.contribution() / opening.leakProbability()), 0);
        text.add("% of the risk");
    }
}
