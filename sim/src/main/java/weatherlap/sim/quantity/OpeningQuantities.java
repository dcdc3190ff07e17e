package weatherlap.sim.quantity;

import java.util.Arrays;
import java.util.Map;
import weatherlap.sim.Check;
import weatherlap.sim.assumptions.Driver;
import weatherlap.sim.method.Method;

/**
 * Quantities of one opening.
 *
 * @param method by which it is done
 * @param counted quantity of every opening-level driver, 0 or more, by its ordinal; NaN of one that was not taken off
 */
@SuppressWarnings("ArrayRecordComponent") // asked for by every row of labor and material
public record OpeningQuantities(Method method, double[] counted) {
    private static final Driver[] DRIVERS = Driver.values();

    public OpeningQuantities {
        for (Driver driver : DRIVERS) {
            double quantity = counted[driver.ordinal()];
            if (!Double.isNaN(quantity)) {
                Check.notNegative("quantity of ", driver, quantity);
                if (driver.level() != Driver.Level.OPENING) {
                    throw new IllegalArgumentException("The driver " + driver + " is not counted at an opening.");
                }
            }
        }
    }

    public OpeningQuantities(Method method, Map<Driver, Double> counted) {
        this(method, byOrdinal(counted));
    }

    private static double[] byOrdinal(Map<Driver, Double> counted) {
        double[] quantities = none();
        counted.forEach((driver, quantity) -> quantities[driver.ordinal()] = quantity);
        return quantities;
    }

    /** Of which nothing was taken off. */
    public static double[] none() {
        double[] quantities = new double[DRIVERS.length];
        Arrays.fill(quantities, Double.NaN);
        return quantities;
    }

    /** @throws IllegalArgumentException when it was not taken off */
    public double of(Driver driver) {
        double quantity = counted[driver.ordinal()];
        if (Double.isNaN(quantity)) {
            throw new IllegalArgumentException("The quantity of " + driver + " was not taken off.");
        }
        return quantity;
    }
}
