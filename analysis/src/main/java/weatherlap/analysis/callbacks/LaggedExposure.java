package weatherlap.analysis.callbacks;

import java.util.List;
import weatherlap.sim.Check;

/**
 * What is expected to have been reported of events that are told of late: they happen at a rate that is constant between knots, and each
 * is reported after an exponential time of mean d.
 *
 * <pre>
 *  reported by T   R(T) = ∫₀ᵀ λ(u) (1 − e^(−(T − u)/d)) du = Σ λ_k [ (e − s) − d (e^(−(T − e)/d) − e^(−(T − s)/d)) ]
 *  a year, at t    r(t) = ∫₀ᵗ λ(u) e^(−(t − u)/d) / d du   = Σ λ_k [ e^(−(t − e)/d) − e^(−(t − s)/d) ]
 * </pre>
 *
 * <p>with s and e the ends of a stretch of constant rate, cut off at T or t. Exact. With one rate R is λT times 1 − (1 − e^(−T/d)) d/T.
 * Past the last knot its last rate goes on.
 *
 * @param knots years, ascending, the first 0
 * @param expected events by each of them, the first 0, never falling
 * @see "Lawless 1998, International Statistical Review 66(1) (statistical analysis of product warranty data; abstract)"
 */
public record LaggedExposure(List<Double> knots, List<Double> expected) {
    public LaggedExposure {
        knots = List.copyOf(knots);
        expected = List.copyOf(expected);
        if (knots.size() < 2 || knots.size() != expected.size() || knots.get(0) != 0 || expected.get(0) != 0) {
            throw new IllegalArgumentException("A rate needs two knots or more, the first 0, and a count at each.");
        }
        for (int k = 1; k < knots.size(); k++) {
            Check.positive("time between knots", knots.get(k) - knots.get(k - 1));
            Check.notNegative("events between knots", expected.get(k) - expected.get(k - 1));
        }
    }

    /** One rate for ever, events a year. */
    public static LaggedExposure constant(double perYear) {
        return new LaggedExposure(List.of(0.0, 1.0), List.of(0.0, perYear));
    }

    /** So many times the events. */
    public LaggedExposure times(double factor) {
        return new LaggedExposure(
                knots, expected.stream().map(count -> factor * count).toList());
    }

    /** Events expected by a time, reported or not. */
    public double happened(double years) {
        return reported(years, 0);
    }

    /**
     * Events expected to be reported by a time.
     *
     * @param lagYears mean time to the report, 0 or more
     */
    public double reported(double years, double lagYears) {
        double sum = 0;
        for (int k = 0; k + 1 < knots.size() && knots.get(k) < years; k++) {
            double start = knots.get(k);
            double end = end(k, years);
            double late =
                    lagYears == 0 ? 0 : lagYears * (decay(years - end, lagYears) - decay(years - start, lagYears));
            sum += rate(k) * (end - start - late);
        }
        return sum;
    }

    /** Reports expected a year, at a time after the start. */
    public double reportedPerYear(double years, double lagYears) {
        double sum = 0;
        for (int k = 0; k + 1 < knots.size() && knots.get(k) < years; k++) {
            double end = end(k, years);
            sum += lagYears == 0
                    ? (end == years ? rate(k) : 0)
                    : rate(k) * (decay(years - end, lagYears) - decay(years - knots.get(k), lagYears));
        }
        return sum;
    }

    private double rate(int k) {
        return (expected.get(k + 1) - expected.get(k)) / (knots.get(k + 1) - knots.get(k));
    }

    private double end(int k, double years) {
        return k + 2 == knots.size() ? years : Math.min(years, knots.get(k + 1));
    }

    private static double decay(double years, double lagYears) {
        return Math.exp(-years / lagYears);
    }
}
