package weatherlap.reports.whatif;

import java.util.ArrayList;
import java.util.List;
import weatherlap.analysis.choice.EvenPrice;
import weatherlap.analysis.tables.Answer;
import weatherlap.analysis.tables.Comparison;
import weatherlap.analysis.words.Numbers;
import weatherlap.sim.method.Contrast;

/**
 * The answer about the houses that the workbook shows.
 *
 * @param all houses of the portfolio
 */
record ShownAnswer(Answer answer, EvenPrice even, int all) {
    static ShownAnswer of(Comparison comparison, double serviceReserve) {
        Answer shown = comparison.answer();
        if (comparison.isSample()) {
            Comparison.Sum sum =
                    new Comparison.Sum(comparison.draws(), comparison.shown().size());
            comparison.shown().forEach(sum::add);
            shown = sum.comparison().answer();
        }
        return new ShownAnswer(
                shown, EvenPrice.of(shown, serviceReserve), comparison.answer().houses());
    }

    Contrast contrast() {
        return answer.contrast();
    }

    /** What the sheet computes, what it takes from the run, and what it leaves out. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (answer.houses() < all) {
            notes.add("These are " + Numbers.count(answer.houses(), "house", "houses") + " spread evenly over the "
                    + Numbers.plain(all, 0) + "; their average is near that of all, not the same.");
        }
        notes.add(
                "Computed here: labor is minutes times the wage; a price is labor, material and the leak repairs that the shop"
                        + " pays, over 1 less profit and service; profit and the family’s cost follow from it. They are what a new run"
                        + " with these numbers gives, to the cent.");
        notes.add(
                "Taken from the run: minutes, crew days and material of each crew, leak repairs over each number of years"
                        + " (sheet " + JobSheet.SHEET
                        + "). A crew’s days are planned whole, wall by wall, and leaks do not grow in"
                        + " step with years, so other crews and years need a new run.");
        notes.add("Not here: ranges, leak chances, the rule, the season. They need a new run, such as compare --set"
                + " gross_margin=0.35.");
        double whole = answer.of(contrast().other(answer.cheaper())).horizonCostUsd()
                - answer.of(answer.cheaper()).horizonCostUsd();
        double plans = answer.savedPerHouseUsd().mean();
        if (Math.round(whole) != Math.round(plans)) {
            notes.add("Each house here is done wholly by one method, so that "
                    + answer.cheaper().many() + " would save the"
                    + " average family " + Numbers.usd(whole) + ". The Summary says " + Numbers.usd(plans)
                    + ": there a window that a method can’t go into gets another one.");
        }
        return notes;
    }
}
