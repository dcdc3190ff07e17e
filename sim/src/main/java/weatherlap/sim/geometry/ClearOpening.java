package weatherlap.sim.geometry;

import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.assumptions.Sightline;
import weatherlap.sim.house.Operation;

/**
 * The net clear opening of one unit, opened as far as it goes. With the inside of its frame W × H and a lite w × h:
 *
 * <pre>
 *   double, single hung   W × (h + min(top rail, bottom rail) − travel loss)   lower sash up behind the upper
 *   slider                (w + stile − travel loss) × H
 *   casement              (W − hinge loss) × H
 *   awning                W × min(H, 2H sin(angle/2))                          chord under the sash
 *   picture               none
 * </pre>
 *
 * Plane geometry; the losses are scalars of the scenario. A maker's own figure goes before this one.
 *
 * @param rect where it is; of no area where the unit does not open. Its lower edge is what one climbs over.
 */
public record ClearOpening(Rect rect) {
    static ClearOpening of(Lites unit, Sightline sightline, Operation operation, Scenario scenario) {
        Rect inside = unit.inside();
        if (unit.lites().isEmpty() || operation == Operation.PICTURE) {
            return new ClearOpening(new Rect(inside.leftIn(), inside.bottomIn(), 0, 0));
        }
        Rect lite = unit.lites().get(0);
        double travelLossIn = scenario.value(Scalar.TRAVEL_LOSS_IN);
        double widthIn =
                switch (operation) {
                    case SLIDER -> lite.widthIn() + sightline.stileIn() - travelLossIn;
                    case CASEMENT -> inside.widthIn() - scenario.value(Scalar.HINGE_LOSS_IN);
                    case DOUBLE_HUNG, SINGLE_HUNG, AWNING, PICTURE -> inside.widthIn();
                };
        double heightIn =
                switch (operation) {
                    case DOUBLE_HUNG, SINGLE_HUNG ->
                        lite.heightIn() + Math.min(sightline.topRailIn(), sightline.bottomRailIn()) - travelLossIn;
                    case AWNING ->
                        inside.heightIn()
                                * Math.min(1, 2 * Math.sin(Math.toRadians(scenario.value(Scalar.AWNING_OPEN_DEG)) / 2));
                    case SLIDER, CASEMENT, PICTURE -> inside.heightIn();
                };
        return new ClearOpening(
                new Rect(inside.leftIn(), inside.bottomIn(), Math.max(0, widthIn), Math.max(0, heightIn)));
    }

    public double widthIn() {
        return rect.widthIn();
    }

    public double heightIn() {
        return rect.heightIn();
    }

    public double areaFt2() {
        return rect.areaFt2();
    }

    /** Whether anyone or any air gets through. */
    public boolean opens() {
        return !rect.isEmpty();
    }
}
