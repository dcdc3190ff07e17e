package weatherlap.sim.geometry;

import weatherlap.sim.Sum;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.method.Method;

/**
 * Weight of what is lifted in one piece: mulled units go up together, those set between the posts of an old frame that stays one by one. Glass weighs 2.5 kg/m² for each mm of thickness (EN 572-1: 2500 kg/m³), 0.512 lb/ft²; each lite is the visible glass and
 * the edge that its sash hides; frame and sash go by the foot of perimeter of each unit, what joins mulled ones is not counted.
 *
 * @param pieces equal ones at the opening, lifted one after another
 * @param glassLb of one piece
 * @param frameLb of one piece, frames and sashes
 * @param limitLb one person's lift in the scenario
 * @param upstairs whether it is set off a ladder or staging, or handed out of a window over the first story
 */
public record UnitWeight(int pieces, double glassLb, double frameLb, double limitLb, boolean upstairs) {
    /** kg/m² for each mm. */
    private static final double GLASS_KG_PER_M2_MM = 2.5;

    /** Who may lift. A hint: an ideal-lift limit, no legal one, for a load held close with a good grip. */
    public enum Lift {
        ONE_PERSON,
        TWO_PEOPLE,
        MORE_OR_A_MACHINE
    }

    /** @param storey in which the opening stands, from 1 */
    static UnitWeight of(Glass units, Method method, int storey, Scenario scenario) {
        int pieces = method.keepsOldFrame() ? units.units().size() : 1;
        double glassLb = Sum.of(units.units(), unit -> glassLb(unit, scenario));
        double frameFt =
                Sum.of(units.units(), unit -> Units.inchesToFeet(unit.unit().perimeterIn()));
        return new UnitWeight(
                pieces,
                glassLb / pieces,
                scenario.value(Scalar.FRAME_LB_PER_FT) * frameFt / pieces,
                scenario.value(Scalar.LIFT_LIMIT_LB),
                storey > 1);
    }

    private static double glassLb(Lites unit, Scenario scenario) {
        double biteIn = scenario.value(Scalar.GLASS_BITE_IN);
        double glassFt2 = Sum.of(
                unit.lites(),
                lite -> Units.squareInchesToSquareFeet((lite.widthIn() + 2 * biteIn) * (lite.heightIn() + 2 * biteIn)));
        return glassLb(glassFt2, scenario.value(Scalar.PANES) * scenario.value(Scalar.PANE_THICKNESS_MM));
    }

    /** Weight of glass, lb, all panes together {@code thicknessMm} thick. */
    static double glassLb(double areaFt2, double thicknessMm) {
        double kilograms = GLASS_KG_PER_M2_MM * thicknessMm * Units.squareFeetToSquareMetres(areaFt2);
        return Units.kilogramsToPounds(kilograms);
    }

    /** The same upstairs or not. */
    UnitWeight carried(boolean up) {
        return up == upstairs ? this : new UnitWeight(pieces, glassLb, frameLb, limitLb, up);
    }

    /** Of one piece. */
    public double totalLb() {
        return glassLb + frameLb;
    }

    /** One person lifts what is under the limit by the pound, and that on the ground floor only (common practice). */
    public Lift lift() {
        long lb = Math.round(totalLb());
        if (lb < limitLb && !upstairs) {
            return Lift.ONE_PERSON;
        }
        return lb <= 2 * limitLb ? Lift.TWO_PEOPLE : Lift.MORE_OR_A_MACHINE;
    }
}
