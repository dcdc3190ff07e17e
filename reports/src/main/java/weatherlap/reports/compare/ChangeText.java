package weatherlap.reports.compare;

import java.util.ArrayList;
import java.util.List;
import weatherlap.analysis.choice.OtherChoice;
import weatherlap.analysis.choice.TippingPoints;
import weatherlap.analysis.leaks.FaultSwing;
import weatherlap.analysis.words.InWords;
import weatherlap.reports.page.ReportWords;
import weatherlap.reports.page.TableView;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;
import weatherlap.sim.price.Pricing;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.MethodResult;
import weatherlap.sim.run.Results;
import weatherlap.sim.run.Simulator;

/** What would change the answer, in sentences and in one table. */
final class ChangeText {
    private static final int ROWS = 3;

    private final Results results;
    private final Simulator simulator;
    private final Scenario scenario;
    private final HouseResult middle;

    ChangeText(Results results, Simulator simulator) {
        this.results = results;
        this.simulator = simulator;
        this.scenario = simulator.assumptions().scenario();
        this.middle = ReportPictures.middleByPrice(results);
    }

    List<String> sentences() {
        TippingPoints points = TippingPoints.of(results, Pricing.of(scenario));
        Contrast contrast = scenario.contrast();
        List<String> lines = new ArrayList<>();
        lines.add("Price: the methods would cost a family the same if "
                + contrast.first().inSentence() + " were priced " + ReportWords.usd(Math.abs(points.gapUsd()))
                + (points.gapUsd() < 0 ? " higher" : " lower") + " a house.");
        lines.add(
                points.repairFactor().isPresent()
                        ? "Leaks: if mending one damaged opening cost "
                                + ReportWords.usd(
                                        repairUsd() * points.repairFactor().getAsDouble())
                                + " rather than the " + ReportWords.usd(repairUsd())
                                + " assumed on the mean (or if the chance of damage were off"
                                + " by as much), they would be even; " + aheadAbove(contrast, points.damageGapUsd())
                                + "."
                        : "Leaks: no cost of mending a leak turns the answer.");
        lines.add(
                points.glassFactor().isPresent()
                        ? "Glass: if a square foot of glass were worth $"
                                + ReportWords.number(
                                        glassUsd() * points.glassFactor().getAsDouble(), 2)
                                + " a year rather than the $"
                                + ReportWords.number(glassUsd(), 2)
                                + " assumed, they would be even; " + aheadAbove(contrast, points.glassGapUsd()) + "."
                        : "Glass: no worth of glass turns the answer.");
        House house = middle.house();
        for (Method method : middle.contrast().both()) {
            lines.add(InWords.capital(ReportWords.of(method)) + " at " + house.label() + " (" + house.id()
                    + "), the house of middle price. "
                    + FaultSwing.line(FaultSwing.of(simulator, house, method), ROWS));
        }
        lines.add(
                "The commands breakeven and drivers look further: any setting, wage or price, and all of them at once.");
        return lines;
    }

    /** The house of middle price with each disputed choice of the scenario taken otherwise. */
    TableView otherChoices() {
        House house = middle.house();
        String first = middle.contrast().first().label();
        String second = middle.contrast().second().label();
        TableView.Builder table = TableView.of(house.label() + " (" + house.id()
                        + "), the house of middle price, with a choice of scenario.toml taken otherwise")
                .texts("choice")
                .numbers("price, " + first, "price, " + second, "leak chance, " + first, second)
                .numbers("cost, " + first, "cost, " + second);
        row(table, "as assumed", middle);
        OtherChoice.of(simulator, house).forEach(other -> row(table, other.setting(), other.result()));
        return table.build();
    }

    private static void row(TableView.Builder table, String choice, HouseResult house) {
        MethodResult full = house.first();
        MethodResult insert = house.second();
        table.row(
                choice,
                ReportWords.usd(full.priceUsd()),
                ReportWords.usd(insert.priceUsd()),
                ReportWords.percent(full.leakProbability(), 1),
                ReportWords.percent(insert.leakProbability(), 1),
                ReportWords.usd(full.horizonCostUsd().mean()),
                ReportWords.usd(insert.horizonCostUsd().mean()));
    }

    /**
     * Which method gains as a loss grows dearer: the one that loses less.
     *
     * @param gapUsd of that loss, first less second
     */
    static String aheadAbove(Contrast contrast, double gapUsd) {
        Method above = contrast.cheaper(gapUsd);
        return "above that " + above.inSentence() + " is ahead, below it "
                + contrast.other(above).inSentence();
    }

    private double repairUsd() {
        return scenario.repairUsd().mean();
    }

    private double glassUsd() {
        return scenario.value(Scalar.GLASS_VALUE_USD_PER_FT2_YEAR);
    }
}
