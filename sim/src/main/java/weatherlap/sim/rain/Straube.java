package weatherlap.sim.rain;

/**
 * Driving rain from the fall speed of drops, a third opinion.
 *
 * <pre>
 * r_vb = RDF · DRF · V · cosθ · r_h
 * </pre>
 *
 * RDF, the rain deposition factor, is the share of the free-wind rain that the wall catches; DRF is that of {@link Raindrop}.
 *
 * @see "J. F. Straube, Simplified prediction of driving rain on buildings, BSD-148, 2010 (handbook)"
 */
final class Straube {
    private Straube() {}

    /**
     * Rain on the wall, L/(m² h); none in the lee.
     *
     * @param drivingRainFactor of a rain of {@code rainMm} in the hour, s/m
     */
    static double hourlyLitresPerM2(
            double depositionFactor,
            double drivingRainFactor,
            double windMetresPerSecond,
            double rainMm,
            double cosine) {
        return cosine <= 0 ? 0 : depositionFactor * drivingRainFactor * windMetresPerSecond * cosine * rainMm;
    }
}
