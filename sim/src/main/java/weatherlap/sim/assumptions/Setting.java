package weatherlap.sim.assumptions;

import java.util.Optional;
import weatherlap.sim.Check;
import weatherlap.sim.explain.Origin;

/**
 * The value of a scalar.
 *
 * @param range low and high where the value is uncertain, for sweeps; its likely value is the value
 */
public record Setting(Scalar scalar, double value, Optional<ThreePoint> range, Origin origin) {
    public Setting {
        Check.within(scalar.key(), value, scalar.low(), scalar.high());
        if (scalar.whole() && value != Math.rint(value)) {
            throw new IllegalArgumentException("The " + scalar.key() + " (" + value + ") must be a whole number.");
        }
    }

    /** The same with another value; its range is dropped where the value leaves it. */
    public Setting with(double newValue) {
        Optional<ThreePoint> kept = range.filter(r -> newValue >= r.low() && newValue <= r.high())
                .map(r -> new ThreePoint(r.low(), newValue, r.high()));
        return new Setting(scalar, newValue, kept, origin);
    }
}
