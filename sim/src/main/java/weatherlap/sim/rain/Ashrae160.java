package weatherlap.sim.rain;

/**
 * Design rain load on a wall, the second opinion beside {@link Iso15927}.
 *
 * <pre>
 * r_bv = F_E · F_D · F_L · U · cosθ · r_h        L/(m² h),   F_L = 0.2 kg s/(m³ mm)
 * </pre>
 *
 * It weighs heavy rain more than the standard above and reads higher.
 *
 * @see "ASHRAE Standard 160 (standard: equation and F_L)"
 */
final class Ashrae160 {
    /** F_L, kg s/(m³ mm). */
    static final double LOAD_FACTOR = 0.2;

    private Ashrae160() {}

    /** Load in L/(m² h); none in the lee. */
    static double hourlyLitresPerM2(
            double exposureFactor, double depositionFactor, double windMetresPerSecond, double rainMm, double cosine) {
        return cosine <= 0
                ? 0
                : exposureFactor * depositionFactor * LOAD_FACTOR * windMetresPerSecond * cosine * rainMm;
    }
}
