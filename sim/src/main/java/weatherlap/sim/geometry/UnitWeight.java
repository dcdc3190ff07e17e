package weatherlap.sim.geometry;

import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;

/**
 * Weight of one new unit. Glass weighs 2.5 kg/m² for each mm of thickness (EN 572-1: 2500 kg/m³), 0.512 lb/ft²; each lite is the
 * visible glass and the edge that its sash hides; frame and sash go by the foot of perimeter.
 *
 * @param glassLb of one unit
 * @param frameLb of one unit, frame and sashes
 * @param limitLb one person's lift in the scenario
 */
public record UnitWeight(double glassLb, double frameLb, double limitLb) {
    /** kg/m² for each mm. */
    private static final double GLASS_KG_PER_M2_MM = 2.5;

    /** Who may lift. A hint: an ideal-lift limit, no legal one, for a load held close with a good grip. */
    public enum Lift {
        ONE_PERSON,
        TWO_PEOPLE,
        MORE_OR_A_MACHINE
    }

    static UnitWeight of(Lites unit, Scenario scenario) {
        double biteIn = scenario.value(Scalar.GLASS_BITE_IN);
        double glassFt2 = unit.lites().stream()
                .mapToDouble(lite -> (lite.widthIn() + 2 * biteIn) * (lite.heightIn() + 2 * biteIn))
                .map(Units::squareInchesToSquareFeet)
                .sum();
        double thicknessMm = scenario.value(Scalar.PANES) * scenario.value(Scalar.PANE_THICKNESS_MM);
        double frameLb = scenario.value(Scalar.FRAME_LB_PER_FT)
                * Units.inchesToFeet(unit.unit().perimeterIn());
        return new UnitWeight(glassLb(glassFt2, thicknessMm), frameLb, scenario.value(Scalar.LIFT_LIMIT_LB));
    }

    /** Weight of glass, lb, all panes together {@code thicknessMm} thick. */
    static double glassLb(double areaFt2, double thicknessMm) {
        double kilograms = GLASS_KG_PER_M2_MM * thicknessMm * Units.squareFeetToSquareMetres(areaFt2);
        return Units.kilogramsToPounds(kilograms);
    }

    public double totalLb() {
        return glassLb + frameLb;
    }

    public Lift lift() {
        if (totalLb() <= limitLb) {
            return Lift.ONE_PERSON;
        }
        return totalLb() <= 2 * limitLb ? Lift.TWO_PEOPLE : Lift.MORE_OR_A_MACHINE;
    }
}
