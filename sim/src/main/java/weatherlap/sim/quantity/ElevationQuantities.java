package weatherlap.sim.quantity;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import weatherlap.sim.Check;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.SidingCondition;

/**
 * Quantities of one wall.
 *
 * @param runs openings that siding ties together, each opening in one of them
 * @param openings quantity of every opening-level driver, in the order of the wall's openings
 */
public record ElevationQuantities(List<SidingRun> runs, List<Map<Driver, Double>> openings) {
    public ElevationQuantities {
        runs = List.copyOf(runs);
        openings = openings.stream().map(ElevationQuantities::checked).toList();
    }

    private static Map<Driver, Double> checked(Map<Driver, Double> quantities) {
        quantities.forEach((driver, quantity) -> {
            Check.notNegative("quantity of " + driver, quantity);
            if (driver.level() != Driver.Level.OPENING) {
                throw new IllegalArgumentException("The driver " + driver + " is not counted at an opening.");
            }
        });
        return Collections.unmodifiableMap(new EnumMap<>(quantities));
    }

    /** Siding panels or boards that come down and go back, a count; 0 where there are none. */
    public double panelsDown() {
        return runs.stream().mapToDouble(SidingRun::panels).sum();
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
            case BROKEN_PANEL ->
                Breakage.panels(
                        panelsDown(),
                        scenario.value(Scalar.BREAKAGE_FRACTION),
                        scenario.value(Scalar.TEMPERATURE_F),
                        condition);
            default -> throw new IllegalArgumentException("The driver " + driver + " is not counted at a wall.");
        };
    }

    /**
     * Quantity at one opening.
     *
     * @throws IllegalArgumentException when it was not taken off
     */
    public double at(int opening, Driver driver) {
        Double quantity = openings.get(opening).get(driver);
        if (quantity == null) {
            throw new IllegalArgumentException("The quantity of " + driver + " was not taken off.");
        }
        return quantity;
    }
}
