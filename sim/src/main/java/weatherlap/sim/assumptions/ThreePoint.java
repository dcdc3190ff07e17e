package weatherlap.sim.assumptions;

import weatherlap.sim.Check;

/**
 * A quantity known as low, likely and high, with low ≤ likely ≤ high, drawn from the beta-PERT distribution on [low, high].
 *
 * <p>Mean (a + 4m + b)/6 is exact for the beta-PERT with shape 4. Its variance is (μ − a)(b − μ)/7, which the classical
 * approximation ((b − a)/6)² only resembles; {@link #variance()} is the exact one.
 *
 * @see "Malcolm, Roseboom, Clark, Fazar 1959, Operations Research 7(5) (the mean); Vose 2008, Risk Analysis (the beta-PERT)"
 */
public record ThreePoint(double low, double likely, double high) {
    public ThreePoint {
        Check.finite("low", low);
        Check.within("likely", likely, low, Double.MAX_VALUE);
        Check.within("high", high, likely, Double.MAX_VALUE);
    }

    /** A value known exactly. */
    public static ThreePoint exactly(double value) {
        return new ThreePoint(value, value, value);
    }

    public double mean() {
        return (low + 4 * likely + high) / 6;
    }

    public double variance() {
        return (mean() - low) * (high - mean()) / 7;
    }

    /** The same range with another likely value, widened as far as that needs. */
    public ThreePoint withLikely(double value) {
        return new ThreePoint(Math.min(low, value), value, Math.max(high, value));
    }

    public ThreePoint times(double factor) {
        Check.notNegative("factor", factor);
        return new ThreePoint(low * factor, likely * factor, high * factor);
    }
}
