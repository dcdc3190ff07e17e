package weatherlap.reports.compare;

import java.util.ArrayList;
import java.util.List;
import weatherlap.analysis.tables.Answer;
import weatherlap.charts.Numbers;
import weatherlap.reports.compare.Traces.Measure;
import weatherlap.reports.page.TableView;
import weatherlap.sim.assumptions.Method;
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
     */
    static List<String> sentences(Answer answer, int horizonYears) {
        Method cheaper = answer.cheaper();
        Answer.PerHouse best = answer.of(cheaper);
        Answer.PerHouse other = answer.of(cheaper.other());
        List<String> lines = new ArrayList<>();
        lines.add(verdict(answer) + " over " + Numbers.count(horizonYears, "year", "years") + " it costs a family "
                + Words.usd(answer.savedPerHouseUsd().mean()) + " less a house than "
                + article(cheaper.other()) + ", price, expected leak damage and lost glass together.");
        lines.add("How sure: it is the cheaper one for the portfolio in " + Words.percent(answer.probability(), 0)
                + " of the draws. In eight draws of ten it " + saved(answer.savedPerHouseUsd()) + " a house.");
        lines.add(departures(answer));
        lines.add("What is given up and gained: " + article(cheaper) + " is priced at " + Words.usd(best.priceUsd())
                + " against " + Words.usd(other.priceUsd()) + " a house, takes "
                + Words.percent(best.glassLostFraction(), 1)
                + " of today\u2019s glass against " + Words.percent(other.glassLostFraction(), 1)
                + ", and leaves a chance of leak damage somewhere in the house of "
                + Words.percent(best.anyLeak(), 0) + " against " + Words.percent(other.anyLeak(), 0) + ".");
        lines.add(
                "The leak figures rest on judgement: no survey says how often each lap fault stands in old walls. Read them"
                        + " as a comparison of the two methods, not as a forecast for a house.");
        return lines;
    }

    /** Both methods side by side, means of a house. */
    static TableView keyFigures(Answer answer, int horizonYears) {
        TableView.Builder table = TableView.of("Means of a house; " + Numbers.count(answer.houses(), "house", "houses")
                        + " with " + Numbers.count(answer.openings(), "opening", "openings"))
                .texts("measure")
                .numbers("full-flange", "insert");
        Answer.PerHouse full = answer.of(Method.FULL_FLANGE);
        Answer.PerHouse insert = answer.of(Method.INSERT);
        row(table, Measure.PRICE, "price", Words.usd(full.priceUsd()), Words.usd(insert.priceUsd()));
        row(table, Measure.PRICE, "cost to the shop", Words.usd(full.costUsd()), Words.usd(insert.costUsd()));
        row(
                table,
                Measure.PRICE,
                "gross profit a crew day",
                Words.usd(full.grossProfitPerCrewDayUsd()),
                Words.usd(insert.grossProfitPerCrewDayUsd()));
        row(
                table,
                Measure.LABOUR,
                "labour, person-hours",
                Words.number(full.labourHours(), 1),
                Words.number(insert.labourHours(), 1));
        row(table, Measure.LABOUR, "crew days", Words.number(full.crewDays(), 1), Words.number(insert.crewDays(), 1));
        row(
                table,
                Measure.GLASS,
                "glass lost of today\u2019s",
                Words.percent(full.glassLostFraction(), 1),
                Words.percent(insert.glassLostFraction(), 1));
        String years = " within " + Numbers.count(horizonYears, "year", "years");
        row(
                table,
                Measure.LEAKS,
                "chance of leak damage at any opening" + years,
                Words.percent(full.anyLeak(), 1),
                Words.percent(insert.anyLeak(), 1));
        row(
                table,
                Measure.HORIZON,
                "expected leak damage" + years,
                Words.usd(full.expectedDamageUsd()),
                Words.usd(insert.expectedDamageUsd()));
        row(
                table,
                Measure.HORIZON,
                "cost over " + Numbers.count(horizonYears, "year", "years") + ": price, damage, lost glass",
                Words.usd(full.horizonCostUsd()),
                Words.usd(insert.horizonCostUsd()));
        return table.build();
    }

    private static void row(TableView.Builder table, Measure measure, String name, String full, String insert) {
        table.row(name, full, insert).leadsTo(measure.id());
    }

    private static String verdict(Answer answer) {
        String method = article(answer.cheaper());
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
                ? "lies between costing " + Words.usd(-usd.p10()) + " more and saving " + Words.usd(usd.p90())
                : "saves between " + Words.usd(usd.p10()) + " and " + Words.usd(usd.p90());
    }

    private static String departures(Answer answer) {
        if (answer.departures() == 0) {
            return "No house of the portfolio does better with "
                    + article(answer.cheaper().other()) + ".";
        }
        return "Depart from it for " + answer.departures() + " of " + Numbers.count(answer.houses(), "house", "houses")
                + ", where " + article(answer.cheaper().other()) + " has the lower expected cost; that saves another "
                + Words.usd(answer.savedByDepartingUsd() / answer.departures())
                + " at each. Each is marked in the list of houses below.";
    }

    /** The method with its article, as it stands in a sentence. */
    private static String article(Method method) {
        return method == Method.INSERT ? "the insert" : "full-flange";
    }
}
