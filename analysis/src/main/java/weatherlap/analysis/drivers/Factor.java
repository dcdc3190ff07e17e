package weatherlap.analysis.drivers;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.function.ObjDoubleConsumer;
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
 * @param known the assumptions with the value and no doubt of it
 * @param assumed those with the value as the likely one of its row, which keeps its range: what the table or {@code --set} would say
 */
public record Factor(
        String name,
        String table,
        String meaning,
        String unit,
        ThreePoint range,
        double lowest,
        double highest,
        ObjDoubleConsumer<Draft> known,
        ObjDoubleConsumer<Draft> assumed) {
    public Factor {
        Check.text("factor", name);
    }

    /** One of which nothing but its value is used. */
    Factor(
            String name,
            String table,
            String meaning,
            String unit,
            ThreePoint range,
            double lowest,
            double highest,
            ObjDoubleConsumer<Draft> change) {
        this(name, table, meaning, unit, range, lowest, highest, change, change);
    }

    /** The assumptions with this number known to be the value. */
    public Assumptions set(Assumptions assumptions, double value) {
        return changed(assumptions, known, value);
    }

    /** The assumptions with this number thought to be the value; at its likely value they are what they were. */
    public Assumptions assume(Assumptions assumptions, double value) {
        return changed(assumptions, assumed, value);
    }

    private static Assumptions changed(Assumptions assumptions, ObjDoubleConsumer<Draft> change, double value) {
        Draft draft = new Draft(assumptions);
        change.accept(draft, value);
        return draft.assumptions();
    }

    boolean ranged() {
        return range.low() < range.high();
    }

    /**
     * Where to look for a change of preference when nobody says: half to twice the likely value; around one at or below zero, as far as
     * it lies from zero or a tenth of what makes sense, whichever is more; and the table's range in any case.
     */
    public Span search() {
        double likely = range.likely();
        double reach = Math.max(-likely, (highest - lowest) / 10);
        double low = likely > 0 ? likely / 2 : likely - reach;
        double high = likely > 0 ? likely * 2 : likely + reach;
        return new Span(Math.max(lowest, Math.min(range.low(), low)), Math.min(highest, Math.max(range.high(), high)));
    }

    /** A value of it to three significant digits, with its unit. */
    public String shown(double value) {
        return rounded(value) + (unit.isEmpty() || unit.equals("fraction") ? "" : " " + unit);
    }

    /** A value to three significant digits. */
    public static String rounded(double value) {
        return new BigDecimal(value)
                .round(new MathContext(3))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** From low to high. */
    public record Span(double low, double high) {}
}
