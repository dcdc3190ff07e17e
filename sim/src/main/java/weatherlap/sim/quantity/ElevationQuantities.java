package weatherlap.sim.quantity;

import java.util.List;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.SidingCondition;
import weatherlap.sim.method.MethodScope;

/**
 * Quantities of one wall.
 *
 * @param runs openings that siding ties together, each opening in one of them
 * @param openings in the order of the wall's openings
 */
public record ElevationQuantities(List<SidingRun> runs, List<OpeningQuantities> openings) {
    public ElevationQuantities {
        runs = List.copyOf(runs);
        openings = List.copyOf(openings);
    }

    /** Those by which its openings are done; none where it has none. */
    public MethodScope methods() {
        int mask = 0;
        for (int o = 0; o < openings.size(); o++) {
            mask |= 1 << openings.get(o).method().ordinal();
        }
        return new MethodScope(mask);
    }

    /** Siding panels or boards that come down and go back, a count; 0 where there are none. */
    public double panelsDown() {
        double panels = 0;
        for (SidingRun run : runs) {
            panels += run.panels(); // whole numbers: no digit is lost
        }
        return panels;
    }

    /**
     * Quantity of a driver that the openings of the wall share.
     *
     * @throws IllegalArgumentException for a driver of another level
     */
    public double shared(Driver driver, SidingCondition condition, Scenario scenario) {
        return switch (driver) {
            case ELEVATION -> 1;
            case PANEL -> panelsDown();
            case BROKEN_PANEL -> Breakage.panels(panelsDown(), condition, scenario);
            default -> throw new IllegalArgumentException("The driver " + driver + " is not counted at a wall.");
        };
    }
}
