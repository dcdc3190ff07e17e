package weatherlap.analysis.drivers;

import java.util.function.BiFunction;
import weatherlap.sim.Check;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.ThreePoint;

/**
 * One number of the assumptions that may be changed by itself.
 *
 * @param name how {@code --vary} calls it: the key of a scalar, or table/row
 * @param table it stands in, without ending
 * @param meaning in words
 * @param unit of its value
 * @param range low, likely and high; of one point where the table states none
 * @param lowest value that makes sense
 * @param highest likewise
 * @param change puts a value in
 */
public record Factor(
        String name,
        String table,
        String meaning,
        String unit,
        ThreePoint range,
        double lowest,
        double highest,
        BiFunction<Assumptions, Double, Assumptions> change) {
    public Factor {
        Check.text("factor", name);
    }

    /** The assumptions with this number known to be the value. */
    public Assumptions set(Assumptions assumptions, double value) {
        return change.apply(assumptions, value);
    }

    boolean ranged() {
        return range.low() < range.high();
    }

    /** Where to look for a change of preference when nobody says: half to twice the likely value, and the table's range in any case. */
    public Span search() {
        double low = Math.min(range.low(), range.likely() / 2);
        double high = Math.max(range.high(), range.likely() * 2);
        return new Span(Math.max(lowest, low), Math.min(highest, high > low ? high : low + 1));
    }

    /** From low to high. */
    public record Span(double low, double high) {}
}
