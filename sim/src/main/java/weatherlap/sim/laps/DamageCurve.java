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
 * and a renewal puts b back into a. Damage within n years has probability Q_n = 1 − a − b, summed year by year so that it never falls.
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
        double sound = fragility.annualProbability(litresPerYear * line.soundPasses());
        double failed = line.failedPasses() == line.soundPasses()
                ? sound
                : fragility.annualProbability(litresPerYear * line.failedPasses());
        double[] damaged = new double[fails.length];
        double a = 1;
        double b = 0;
        for (int year = 1; year < fails.length; year++) {
            if (line.renewedBefore(year)) {
                a += b;
                b = 0;
            }
            b += a * fails[year];
            a *= 1 - fails[year];
            damaged[year] = Math.min(1, damaged[year - 1] + a * sound + b * failed);
            a *= 1 - sound;
            b *= 1 - failed;
        }
        return damaged;
    }
}
