package weatherlap.reports.compare;

import java.util.ArrayList;
import java.util.List;
import weatherlap.analysis.choice.TippingPoints;
import weatherlap.analysis.leaks.FaultSwing;
import weatherlap.charts.InWords;
import weatherlap.sim.assumptions.Method;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.House;
import weatherlap.sim.run.Results;
import weatherlap.sim.run.Simulator;

/** What would change the answer, in sentences. */
final class ChangeText {
    private static final int ROWS = 3;

    private final Results results;
    private final Simulator simulator;
    private final Scenario scenario;

    ChangeText(Results results, Simulator simulator) {
        this.results = results;
        this.simulator = simulator;
        this.scenario = simulator.assumptions().scenario();
    }

    List<String> sentences() {
        TippingPoints points = TippingPoints.of(results);
        boolean fullFlange = points.gapUsd() < 0;
        List<String> lines = new ArrayList<>();
        lines.add("Price: the methods would cost a family the same if full-flange were priced "
                + Words.usd(Math.abs(points.gapUsd())) + (fullFlange ? " higher" : " lower") + " a house.");
        lines.add(
                points.repairFactor().isPresent()
                        ? "Leaks: if mending one damaged opening cost "
                                + Words.usd(repairUsd() * points.repairFactor().getAsDouble())
                                + " rather than the " + Words.usd(repairUsd())
                                + " assumed on the mean (or if the chance of damage were off"
                                + " by as much), they would be even; " + aheadAbove(points.damageGapUsd()) + "."
                        : "Leaks: no cost of mending a leak turns the answer.");
        lines.add(
                points.glassFactor().isPresent()
                        ? "Glass: if a square foot of glass were worth $"
                                + Words.number(glassUsd() * points.glassFactor().getAsDouble(), 2)
                                + " a year rather than the $"
                                + Words.number(glassUsd(), 2)
                                + " assumed, they would be even; " + aheadAbove(points.glassGapUsd()) + "."
                        : "Glass: no worth of glass turns the answer.");
        House house = ReportPictures.middleByPrice(results).house();
        for (Method method : Method.values()) {
            lines.add(InWords.capital(Words.of(method)) + " at " + house.label() + " (" + house.id()
                    + "), the house of middle price. "
                    + FaultSwing.line(FaultSwing.of(simulator, house, method), ROWS));
        }
        lines.add(
                "The commands breakeven and drivers look further: any scalar, wage or price, and all of them at once.");
        return lines;
    }

    /**
     * Which method gains as a loss grows dearer: the one that loses less.
     *
     * @param gapUsd of that loss, full-flange less insert
     */
    static String aheadAbove(double gapUsd) {
        return gapUsd < 0
                ? "above that full-flange is ahead, below it the insert"
                : "above that the insert is ahead, below it full-flange";
    }

    private double repairUsd() {
        return (scenario.value(Scalar.REPAIR_COST_LOW_USD)
                        + 4 * scenario.value(Scalar.REPAIR_COST_USD)
                        + scenario.value(Scalar.REPAIR_COST_HIGH_USD))
                / 6;
    }

    private double glassUsd() {
        return scenario.value(Scalar.GLASS_VALUE_USD_PER_FT2_YEAR);
    }
}
