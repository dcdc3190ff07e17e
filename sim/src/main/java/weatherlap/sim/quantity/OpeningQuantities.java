package weatherlap.sim.quantity;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import weatherlap.sim.Check;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.method.Method;

/**
 * Quantities of one opening.
 *
 * @param method by which it is done
 * @param counted quantity of every opening-level driver, 0 or more
 */
public record OpeningQuantities(Method method, Map<Driver, Double> counted) {
    public OpeningQuantities {
        for (Driver driver : counted.keySet()) {
            Check.notNegative("quantity of ", driver, counted.get(driver));
            if (driver.level() != Driver.Level.OPENING) {
                throw new IllegalArgumentException("The driver " + driver + " is not counted at an opening.");
            }
        }
        counted = Collections.unmodifiableMap(new EnumMap<>(counted));
    }

    /** @throws IllegalArgumentException when it was not taken off */
    public double of(Driver driver) {
        Double quantity = counted.get(driver);
        if (quantity == null) {
            throw new IllegalArgumentException("The quantity of " + driver + " was not taken off.");
        }
        return quantity;
    }
}
