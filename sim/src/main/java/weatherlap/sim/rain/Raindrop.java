package weatherlap.sim.rain;

/**
 * The typical drop of a rain and how it falls.
 *
 * <pre>
 * D50 = 1.105 · r^0.232                                                    mm, r in mm/h
 * V_t = −0.166033 + 4.91844 D − 0.888016 D² + 0.054888 D³ ≤ 9.2             m/s, D in mm
 * DRF = 1 / V_t                                                            s/m
 * </pre>
 *
 * The driving-rain factor DRF turns rain on the ground into rain through a vertical plane: rain · DRF · wind. The polynomial was
 * fitted to drops of 0.1 mm and more; smaller ones are taken as 0.1 mm.
 *
 * @see "A. C. Best, The size distribution of raindrops, 1950 (handbook: the median of its distribution)"
 * @see "A. N. Dingle and Y. Lee, Terminal fallspeeds of raindrops, 1972 (handbook)"
 */
final class Raindrop {
    private static final double SMALLEST_MM = 0.1;
    private static final double FASTEST_METRES_PER_SECOND = 9.2;

    private Raindrop() {}

    /** Drop diameter that half of the water exceeds, mm, at a rain of so many mm/h. */
    static double medianDiameterMm(double rainMmPerHour) {
        return 1.105 * Math.pow(rainMmPerHour, 0.232);
    }

    /** Terminal fall speed, m/s, of a drop of so many mm. */
    static double terminalMetresPerSecond(double diameterMm) {
        double d = Math.max(SMALLEST_MM, diameterMm);
        double speed = -0.166033 + d * (4.91844 + d * (-0.888016 + d * 0.054888));
        return Math.min(FASTEST_METRES_PER_SECOND, speed);
    }

    /** Driving-rain factor, s/m. */
    static double drivingRainFactor(double rainMmPerHour) {
        return 1 / terminalMetresPerSecond(medianDiameterMm(rainMmPerHour));
    }
}
