package weatherlap.sim.rain;

import weatherlap.sim.Check;

/**
 * Driving rain from the fall speed of drops, a third opinion.
 *
 * <pre>
 * r_vb = RDF · DRF · V(z) · cosθ · r_h       V(z) = V_10 (z/10)^α
 * </pre>
 *
 * RDF, the rain deposition factor, is the share of the free-wind rain that the wall catches; DRF is that of {@link Raindrop}.
 *
 * @see "J. F. Straube, Simplified prediction of driving rain on buildings, BSD-148, 2010 (handbook)"
 */
public final class Straube {
    private Straube() {}

    /** Rain on the wall, L/(m² h); none in the lee. */
    public static double hourlyLitresPerM2(
            double depositionFactor, double windMetresPerSecond, double rainMm, double cosine) {
        return cosine <= 0 || rainMm <= 0
                ? 0
                : depositionFactor * Raindrop.drivingRainFactor(rainMm) * windMetresPerSecond * cosine * rainMm;
    }

    /** Wind at a height over that at 10 m, by the power law. */
    public static double heightFactor(double heightM, double exponent) {
        return Math.pow(Check.positive("height", heightM) / 10, exponent);
    }
}
