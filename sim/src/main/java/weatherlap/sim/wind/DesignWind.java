package weatherlap.sim.wind;

import weatherlap.sim.Check;

/**
 * The wind that houses of a site must stand, as the local code gives it.
 *
 * @param speedMph basic wind speed of ASCE 7, a gust of 3 s at 33 ft over open country, for the risk category of houses; 70 to 250
 * @param exposure of the site
 */
public record DesignWind(double speedMph, ExposureCategory exposure) {
    /** No map of ASCE 7 is lower (from memory). */
    public static final double LEAST_MPH = 70;
    /** No map of ASCE 7 is higher (from memory). */
    public static final double MOST_MPH = 250;

    public DesignWind {
        Check.within("design wind speed", speedMph, LEAST_MPH, MOST_MPH);
    }
}
