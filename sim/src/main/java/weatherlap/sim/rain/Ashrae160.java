package weatherlap.sim.rain;

import weatherlap.sim.Check;

/**
 * Design rain load on a wall, the second opinion beside {@link Iso15927}.
 *
 * <pre>
 * r_bv = F_E · F_D · F_L · U · cosθ · r_h        L/(m² h),   F_L = 0.2 kg s/(m³ mm)
 * </pre>
 *
 * It weighs heavy rain more than the standard above and reads higher.
 *
 * @see "ASHRAE Standard 160 (standard: equation, F_L and the share past the outer face; F_E and F_D quoted from memory)"
 */
public final class Ashrae160 {
    /** F_L, kg s/(m³ mm). */
    public static final double LOAD_FACTOR = 0.2;

    /** Share of the load taken to pass the outer face by default. */
    public static final double PAST_THE_FACE = 0.01;

    /** How open the site is. */
    public enum Exposure {
        SEVERE,
        MEDIUM,
        SHELTERED
    }

    /** What is above the wall. */
    public enum Deposition {
        STEEP_ROOF(0.35),
        LOW_SLOPE_ROOF(0.5),
        RUN_OFF(1.0);

        private final double factor;

        Deposition(double factor) {
            this.factor = factor;
        }

        /** F_D. */
        public double factor() {
            return factor;
        }
    }

    private Ashrae160() {}

    /** F_E for a building up to 15 m high; {@code heightM} over 15 is refused. */
    public static double exposureFactor(Exposure exposure, double heightM) {
        boolean low = Check.within("building height", heightM, 0, 15) <= 10;
        return switch (exposure) {
            case SEVERE -> 1.3;
            case MEDIUM -> low ? 1.0 : 1.1;
            case SHELTERED -> low ? 0.7 : 0.8;
        };
    }

    /** Load in L/(m² h); none in the lee. */
    public static double hourlyLitresPerM2(
            double exposureFactor, double depositionFactor, double windMetresPerSecond, double rainMm, double cosine) {
        return cosine <= 0
                ? 0
                : exposureFactor * depositionFactor * LOAD_FACTOR * windMetresPerSecond * cosine * rainMm;
    }
}
