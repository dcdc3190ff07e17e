package weatherlap.reports.compare;

import java.util.ArrayList;
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
import weatherlap.reports.page.TableView;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.Summary;

/** The answer of a comparison in sentences and in one table. */
final class AnswerText {
    private static final double SURE = 0.9;
    private static final double LIKELY = 0.7;

    private AnswerText() {}

    /**
     * The sentences, the answer itself first.
     *
     * @param horizonYears how far ahead the family looks
     * @param ownRecords of the shop, on which the level of the leaks rests, in words; empty: on judgement
     */
    static List<String> sentences(Answer answer, int horizonYears, Optional<String> ownRecords) {
        Method cheaper = answer.cheaper();
        PerHouse best = answer.of(cheaper);
        PerHouse other = answer.of(answer.contrast().other(cheaper));
        List<String> lines = new ArrayList<>();
        lines.add(
                verdict(answer) + " over " + Numbers.count(horizonYears, "year", "years") + " it costs a family "
                        + ReportWords.usd(answer.savedPerHouseUsd().mean()) + " less a house than "
                        + answer.contrast().other(cheaper).inSentence()
                        + ", price, expected leak damage and lost glass together, each at every window that it can be built at.");
        lines.add("How sure: it is the cheaper one for the portfolio in " + ReportWords.percent(answer.probability(), 0)
                + " of the draws. In eight draws of ten it " + saved(answer.savedPerHouseUsd()) + " a house.");
        if (answer.standIns() > 0) {
            lines.add("At " + Numbers.count(answer.standIns(), "house", "houses")
                    + " of brick or stucco no flanged unit fits behind the masonry: full-frame stands in its place there, here and in every"
                    + " figure that sets the two side by side.");
        }
        lines.add(departures(answer));
        lines.add(plans(answer));
        lines.add("What is given up and gained: " + cheaper.inSentence() + " is priced at "
                + ReportWords.usd(best.priceUsd())
                + " against " + ReportWords.usd(other.priceUsd()) + " a house, takes "
                + ReportWords.percent(best.glassLostFraction(), 1)
                + " of today\u2019s glass against " + ReportWords.percent(other.glassLostFraction(), 1)
                + ", and leaves a chance of leak damage somewhere in the house of "
                + ReportWords.percent(best.anyLeak(), 0) + " against " + ReportWords.percent(other.anyLeak(), 0) + ".");
        lines.add(leakBasis(ownRecords));
        return lines;
    }

    /** Whose records the level of the leaks rests on. */
    private static String leakBasis(Optional<String> ownRecords) {
        return ownRecords
                .map(records -> "The level of the leak figures rests on the shop\u2019s own records: "
                        + records.replaceFirst("^own records: ", "")
                        + ". Which walls and which laps leak more is judgement still.")
                .orElse(
                        "The leak figures rest on judgement: no survey says how often each lap fault stands in old walls. Read"
                                + " them as a comparison of the two methods, not as a forecast for a house.");
    }

    /** Both methods side by side, means of a house. */
    static TableView keyFigures(Answer answer, int horizonYears) {
        TableView.Builder table = TableView.of("Means of a house; " + Numbers.count(answer.houses(), "house", "houses")
                        + " with " + Numbers.count(answer.openings(), "opening", "openings"))
                .texts("measure")
                .numbers(
                        answer.contrast().first().label(),
                        answer.contrast().second().label());
        String years = " within " + Numbers.count(horizonYears, "year", "years");
        row(table, answer, Measure.PRICE, "price", house -> ReportWords.usd(house.priceUsd()));
        row(table, answer, Measure.PRICE, "cost to the shop", house -> ReportWords.usd(house.costUsd()));
        row(
                table,
                answer,
                Measure.PRICE,
                "gross profit: price less labor, material and service; overhead is paid out of it",
                house -> ReportWords.usd(house.grossProfitUsd()));
        row(table, answer, Measure.LABOUR, "crew days", house -> ReportWords.number(house.crewDays(), 2));
        row(
                table,
                answer,
                Measure.PRICE,
                "gross profit a crew day: the one divided by the other",
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
                "expected leak damage" + years,
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
                "the same, each at every window that it can be built at",
                house -> ReportWords.usd(house.planHorizonCostUsd()));
        return table.build();
    }

    private static void row(
            TableView.Builder table, Answer answer, Measure measure, String name, Function<PerHouse, String> value) {
        String full = value.apply(answer.of(answer.contrast().first()));
        String insert = value.apply(answer.of(answer.contrast().second()));
        table.row(name, full, insert).leadsTo(measure.id());
    }

    private static String verdict(Answer answer) {
        String method = answer.cheaper().inSentence();
        if (answer.probability() >= SURE) {
            return "Make " + method + " the default:";
        }
        if (answer.probability() >= LIKELY) {
            return "Make " + method + " the default, though it is not certain:";
        }
        return "It is close, with a lean to " + method + ":";
    }

    private static String saved(Summary usd) {
        return usd.p10() < 0
                ? "lies between costing " + ReportWords.usd(-usd.p10()) + " more and saving "
                        + ReportWords.usd(usd.p90())
                : "saves between " + ReportWords.usd(usd.p10()) + " and " + ReportWords.usd(usd.p90());
    }

    private static String plans(Answer answer) {
        FamilyPlans plans = answer.plans();
        double saves = answer.of(answer.cheaper()).planHorizonCostUsd() - plans.horizonCostUsd();
        return "Window by window: the cheapest plan of each house that keeps the family\u2019s limit of leak damage, or the least"
                + " risky where none does, "
                + (saves < 0 ? "costs " + ReportWords.usd(-saves) + " more" : "saves another " + ReportWords.usd(saves))
                + " a house, is priced at " + ReportWords.usd(plans.priceUsd())
                + " and leaves a chance of leak damage of "
                + ReportWords.percent(plans.anyLeak(), 0) + "; it mixes methods in "
                + Numbers.count(plans.mixed(), "house", "houses") + ". " + limit(answer);
    }

    /** How often the limit of leak damage overrules a default. */
    private static String limit(Answer answer) {
        List<String> over = Stream.of(answer.cheaper(), answer.contrast().other(answer.cheaper()))
                .filter(method -> answer.of(method).overLimit() > 0)
                .map(method -> method.inSentence() + " breaks it in "
                        + Numbers.count(answer.of(method).overLimit(), "house", "houses"))
                .toList();
        String none = answer.plans().atRisk() == 0
                ? ""
                : " In " + Numbers.count(answer.plans().atRisk(), "house", "houses") + " no plan keeps it.";
        return over.isEmpty()
                ? "Neither method as the default breaks the limit where another plan keeps it." + none
                : InWords.capital(InWords.list(over)) + " where another plan keeps it." + none;
    }

    private static String departures(Answer answer) {
        String other = answer.contrast().other(answer.cheaper()).inSentence();
        String houses = Numbers.count(answer.houses(), "house", "houses");
        String heldBack = answer.heldBack() == 0
                ? ""
                : " Limits hold back " + answer.heldBack() + (answer.departures() == 0 ? "" : " more") + ", where "
                        + other + " alone would cost less: see the rule below.";
        if (answer.departures() == 0) {
            return "No house does better with " + other + " under the limits." + heldBack;
        }
        return "Depart from it for " + answer.departures() + " of " + houses + ": there " + other
                + ", at every window that no limit closes to it, saves another "
                + ReportWords.usd(answer.savedByDepartingUsd() / answer.departures())
                + " each." + heldBack + " The list of houses has the plan of each.";
    }
}
