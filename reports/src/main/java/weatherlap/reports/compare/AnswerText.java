package weatherlap.reports.compare;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import weatherlap.analysis.tables.Answer;
import weatherlap.analysis.tables.Answer.FamilyPlans;
import weatherlap.analysis.tables.Answer.PerHouse;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.compare.Traces.Measure;
import weatherlap.reports.page.ReportWords;
import weatherlap.reports.page.TableView;
import weatherlap.sim.method.Method;

/** The answer of a comparison in sentences and in one table. */
final class AnswerText {
    private AnswerText() {}

    /**
     * What the first page leaves out.
     *
     * @param ownRecords of the shop, on which the level of the leaks rests, in words; empty: on judgment
     */
    static List<String> sentences(Answer answer, Optional<String> ownRecords) {
        Method cheaper = answer.cheaper();
        PerHouse best = answer.of(cheaper);
        PerHouse other = answer.of(answer.contrast().other(cheaper));
        return List.of(
                "What is given up and gained: with " + cheaper.many() + " the average house is priced at "
                        + ReportWords.usd(best.priceUsd()) + " against " + ReportWords.usd(other.priceUsd())
                        + ". It loses " + ReportWords.percent(best.glassLostFraction(), 1)
                        + " of today\u2019s glass against " + ReportWords.percent(other.glassLostFraction(), 1)
                        + ". The chance of leak damage somewhere in the house is "
                        + ReportWords.percent(best.anyLeak(), 0) + " against "
                        + ReportWords.percent(other.anyLeak(), 0) + ".",
                plans(answer) + heldBack(answer),
                leakBasis(ownRecords));
    }

    /** Whose records the level of the leaks rests on. */
    private static String leakBasis(Optional<String> ownRecords) {
        return ownRecords
                .map(records -> "How often walls leak rests on the shop\u2019s own records: "
                        + records.replaceFirst("^own records: ", "")
                        + ". Which walls and which laps leak more is still judgment.")
                .orElse("The leak figures rest on judgment: no survey says how often each lap fault stands in old"
                        + " walls. Use them to compare the two methods, not to predict what one house will do.");
    }

    /** Both methods side by side, means of a house. */
    static TableView keyFigures(Answer answer, int horizonYears) {
        TableView.Builder table = TableView.of(
                        "The average house of " + Numbers.count(answer.houses(), "house", "houses") + " with "
                                + Numbers.count(answer.openings(), "opening", "openings"))
                .texts("measure")
                .numbers(
                        answer.contrast().first().label(),
                        answer.contrast().second().label());
        String years = " within " + Numbers.count(horizonYears, "year", "years");
        row(table, answer, Measure.PRICE, "price", house -> ReportWords.usd(house.priceUsd()));
        row(
                table,
                answer,
                Measure.PRICE,
                "cost to the shop, overhead included",
                house -> ReportWords.usd(house.costUsd()));
        row(
                table,
                answer,
                Measure.PRICE,
                "gross profit: price less labor, material and service; it pays the overhead",
                house -> ReportWords.usd(house.grossProfitUsd()));
        row(table, answer, Measure.LABOUR, "crew days", house -> ReportWords.number(house.crewDays(), 2));
        row(
                table,
                answer,
                Measure.PRICE,
                "gross profit a crew day",
                house -> ReportWords.usd(house.grossProfitPerCrewDayUsd()));
        row(table, answer, Measure.LABOUR, "labor, person-hours", house -> ReportWords.number(house.labourHours(), 1));
        row(
                table,
                answer,
                Measure.GLASS,
                "glass lost of today\u2019s",
                house -> ReportWords.percent(house.glassLostFraction(), 1));
        row(
                table,
                answer,
                Measure.LEAKS,
                "chance of leak damage at any opening" + years,
                house -> ReportWords.percent(house.anyLeak(), 1));
        row(
                table,
                answer,
                Measure.HORIZON,
                "likely cost of leak damage" + years,
                house -> ReportWords.usd(house.expectedDamageUsd()));
        row(
                table,
                answer,
                Measure.HORIZON,
                "cost over " + Numbers.count(horizonYears, "year", "years") + ": price, damage, lost glass",
                house -> ReportWords.usd(house.horizonCostUsd()));
        row(
                table,
                answer,
                Measure.HORIZON,
                "the same, with another method where this one can\u2019t go in",
                house -> ReportWords.usd(house.planHorizonCostUsd()));
        return table.build();
    }

    private static void row(
            TableView.Builder table, Answer answer, Measure measure, String name, Function<PerHouse, String> value) {
        String full = value.apply(answer.of(answer.contrast().first()));
        String insert = value.apply(answer.of(answer.contrast().second()));
        table.row(name, full, insert).leadsTo(measure.id());
    }

    private static String plans(Answer answer) {
        FamilyPlans plans = answer.plans();
        double saves = answer.of(answer.cheaper()).planHorizonCostUsd() - plans.horizonCostUsd();
        return "Window by window: we looked for the cheapest plan of each house that keeps leak risk within what a family should"
                + " take, and for the safest plan where none does. Such a plan "
                + (saves < 0 ? "costs " + ReportWords.usd(-saves) + " more" : "saves another " + ReportWords.usd(saves))
                + " a house. It is priced at " + ReportWords.usd(plans.priceUsd())
                + " and leaves a " + ReportWords.percent(plans.anyLeak(), 0)
                + " chance of leak damage. It mixes methods at "
                + Numbers.count(plans.mixed(), "house", "houses") + ". " + limit(answer);
    }

    /** How often the limit of leak damage overrules a default. */
    private static String limit(Answer answer) {
        List<String> over = Stream.of(answer.cheaper(), answer.contrast().other(answer.cheaper()))
                .filter(method -> answer.of(method).overLimit() > 0)
                .map(method -> "with " + method.many() + " the risk is too high at "
                        + Numbers.count(answer.of(method).overLimit(), "house", "houses"))
                .toList();
        String none = answer.plans().atRisk() == 0
                ? ""
                : " At " + Numbers.count(answer.plans().atRisk(), "house", "houses") + " no plan keeps it within that.";
        return over.isEmpty()
                ? "Neither method alone takes more risk than that where another plan could do better." + none
                : InWords.capital(InWords.list(over)) + " where another plan would do." + none;
    }

    private static String heldBack(Answer answer) {
        String other = answer.contrast().other(answer.cheaper()).many();
        return answer.heldBack() == 0
                ? ""
                : " At " + Numbers.count(answer.heldBack(), "house", "houses") + " " + other
                        + " would cost less, but can\u2019t go in at every window.";
    }
}
