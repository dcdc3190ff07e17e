package weatherlap.sim.material;

import java.util.List;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.house.Opening;

/**
 * What it costs to tip the old units: glass by area and thickness (2.5 kg/m² for each mm) and frame by perimeter, with the scenario's
 * lites, thickness and frame weight. The frame's area stands for the glass and the frame that an insert leaves is counted too: both
 * put the weight high, by about a dollar an opening at the tipping fees on record. A load has a least charge, whatever it weighs.
 *
 * @see "EN 572-1, density of float glass 2500 kg/m³"
 */
public final class Disposal {
    private static final double GLASS_KG_PER_M2_MM = 2.5;

    private Disposal() {}

    /** USD for one opening. */
    public static Amount cost(Scenario scenario, Opening opening) {
        Amount tons = Amount.formula(
                "old unit",
                tons(scenario, opening),
                "ton",
                List.of(
                        Amount.given(
                                "frame area",
                                Units.squareInchesToSquareFeet(opening.frame().areaIn2()),
                                "ft²"),
                        scenario.amount(Scalar.PANES),
                        scenario.amount(Scalar.PANE_THICKNESS_MM),
                        scenario.amount(Scalar.FRAME_LB_PER_FT)));
        return Amount.product("tipping", "USD", List.of(tons, scenario.amount(Scalar.DISPOSAL_USD_PER_TON)));
    }

    /** The value of {@link #cost}, USD. */
    public static double usd(Scenario scenario, Opening opening) {
        return tons(scenario, opening) * scenario.value(Scalar.DISPOSAL_USD_PER_TON);
    }

    private static double tons(Scenario scenario, Opening opening) {
        return Units.poundsToShortTons(weightLb(scenario, opening));
    }

    /** What the least charge of one load asks beyond the tipping of a house's openings, USD. */
    public static Amount restOfLeastCharge(Scenario scenario, List<Amount> openings) {
        Amount byWeight = Amount.sum("tipping by weight", "USD", openings);
        Amount least = scenario.amount(Scalar.TIPPING_LEAST_USD);
        return Amount.formula(
                "rest of the least charge of a load",
                restOfLeastCharge(scenario, byWeight.value()),
                "USD",
                List.of(least, byWeight));
    }

    /** The same, USD, from the tipping by weight, USD. */
    public static double restOfLeastCharge(Scenario scenario, double byWeightUsd) {
        return Math.max(0, scenario.value(Scalar.TIPPING_LEAST_USD) - byWeightUsd);
    }

    static double weightLb(Scenario scenario, Opening opening) {
        double areaM2 = Units.inchesToMetres(opening.frame().widthIn())
                * Units.inchesToMetres(opening.frame().heightIn());
        double glassKg =
                areaM2 * GLASS_KG_PER_M2_MM * scenario.value(Scalar.PANES) * scenario.value(Scalar.PANE_THICKNESS_MM);
        double perimeterFt = Units.inchesToFeet(
                2 * (opening.frame().widthIn() + opening.frame().heightIn()));
        return Units.kilogramsToPounds(glassKg) + perimeterFt * scenario.value(Scalar.FRAME_LB_PER_FT);
    }
}
