package weatherlap.sim.work;

import java.util.ArrayList;
import java.util.List;
import weatherlap.sim.Each;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.explain.Amount;
import weatherlap.sim.material.Disposal;
import weatherlap.sim.material.MaterialLine;

/** The material of a house in amounts that say where they come from; values alone are quicker had of {@link WorkTakeoff}. */
final class MaterialAmounts {
    private MaterialAmounts() {}

    /** Units, items in whole packages, permit and tipping, USD. */
    static Amount all(Scenario scenario, List<OpeningWork> openings, List<MaterialLine> materials) {
        return Amount.sum(
                "material",
                "USD",
                List.of(
                        Amount.sum("new units", "USD", Each.of(openings, OpeningWork::unit)),
                        Amount.sum("items", "USD", Each.of(materials, MaterialLine::amount)),
                        Amount.sum("tipping", "USD", Each.of(openings, OpeningWork::tipping)),
                        restOfTipping(scenario, openings),
                        scenario.amount(Scalar.PERMIT_USD)));
    }

    /** What the house pays the tip beyond the weight of its openings, USD: a load has a least charge. */
    static Amount restOfTipping(Scenario scenario, List<OpeningWork> openings) {
        return Disposal.restOfLeastCharge(scenario, Each.of(openings, OpeningWork::tipping));
    }

    /**
     * One opening, USD: its unit, its tipping and what it uses of the items.
     *
     * @param place of the opening in the house
     */
    static Amount ofOpening(OpeningWork opening, int place, List<MaterialLine> materials) {
        List<Amount> parts = new ArrayList<>(List.of(opening.unit(), opening.tipping()));
        for (MaterialLine line : materials) {
            if (line.openings()[place] > 0) {
                parts.add(line.openingAmount(place));
            }
        }
        return Amount.sum("material of opening " + opening.opening().id(), "USD", parts);
    }

    /** What no opening uses, USD: shared items, the rest of each last package and of the tip's least charge, the permit. */
    static Amount ofHouse(Scenario scenario, List<OpeningWork> openings, List<MaterialLine> materials) {
        List<MaterialLine> shared = Each.where(materials, line -> line.shared() > 0);
        List<Amount> parts = new ArrayList<>(Each.of(shared, MaterialLine::sharedAmount));
        parts.addAll(Each.of(materials, MaterialLine::remainderAmount));
        parts.add(restOfTipping(scenario, openings));
        parts.add(scenario.amount(Scalar.PERMIT_USD));
        return Amount.sum("material of the house", "USD", parts);
    }
}
