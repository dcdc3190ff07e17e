package weatherlap.sim.laps;

/**
 * The chance that one standing fault has done damage by the end of each year, exact over the life of the seal before it.
 *
 * <p>With x litres a year arriving at the lap and let in if no line stood before it, a year does damage with h_s = P(s·x) while the line
 * is sound and with h_f = P(f·x) when it has failed (s and f the shares that pass), P the {@link Fragility}. Let a and b be the chances that no
 * damage has been done and the seal is sound, or failed. A year moves them by
 *
 * <pre>  a ← a (1 − φ) (1 − h_s),   b ← (b + a φ) (1 − h_f),   with φ the chance that the seal fails by the middle of that year,</pre>
 *
 * and a renewal puts b back into a. Damage within n years has probability Q_n = 1 − a − b.
 */
final class DamageCurve {
    private final LineOfDefence line;
    private final Fragility fragility;
    private final double[] fails;

    DamageCurve(LineOfDefence line, Fragility fragility, int years) {
        this.line = line;
        this.fragility = fragility;
        fails = new double[years + 1];
        for (int year = 1; year <= years; year++) {
            fails[year] = line.failsIn(year);
        }
    }

    /** Q_0 = 0, Q_1, … Q_years for x litres a year. */
    double[] byYear(double litresPerYear) {
        double sound = 1 - fragility.annualProbability(litresPerYear * line.soundPasses());
        double failed = 1 - fragility.annualProbability(litresPerYear * line.failedPasses());
        double[] damaged = new double[fails.length];
        double a = 1;
        double b = 0;
        for (int year = 1; year < fails.length; year++) {
            if (line.renewedBefore(year)) {
                a += b;
                b = 0;
            }
            b = (b + a * fails[year]) * failed;
            a = a * (1 - fails[year]) * sound;
            damaged[year] = Math.max(damaged[year - 1], 1 - a - b);
        }
        return damaged;
    }
}
