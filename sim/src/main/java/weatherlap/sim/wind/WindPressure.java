package weatherlap.sim.wind;

import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import weatherlap.sim.Check;

/**
 * The pressure on a window in the wall of a house, by the components and cladding of low, enclosed buildings in ASCE 7, at the level of
 * allowable stress:
 *
 * <pre>
 * p = 0.6 · 0.00256 · Kz · Kd · V² · (GCp ± 0.18)        psf, V in mph, Kd = 0.85
 * </pre>
 *
 * GCp falls with the logarithm of the area from 10 to 500 ft²: inward +1.0 to +0.7; outward −1.1 to −0.8 in the field of a wall (zone 4),
 * −1.4 to −0.8 near its corners (zone 5). Kz: by exposure and mean roof height, between the rows of the standard in a straight line. Level
 * ground, sea level, no hill upwind.
 *
 * @see "ASCE 7, chapter 30, walls of low-rise buildings (standard; from memory). Checked against the roof rows of IRC 2018 table R301.2(2),
 *     which share all but GCp"
 */
public final class WindPressure {
    /** Mean roof height that the method reaches, ft. */
    public static final double HIGHEST_FT = 60;

    private static final double ALLOWABLE_STRESS = 0.6;
    private static final double VELOCITY_PRESSURE = 0.00256;
    private static final double DIRECTIONALITY = 0.85;
    private static final double INTERNAL = 0.18;
    private static final double SMALL_FT2 = 10;
    private static final double LARGE_FT2 = 500;
    private static final double[] HEIGHTS_FT = {0, 15, 20, 25, 30, 40, 50, HIGHEST_FT};

    private WindPressure() {}

    /** Inward pressure, psf, above 0. */
    public static double inwardPsf(DesignWind wind, double roofHeightFt, double areaFt2) {
        return velocityPsf(wind, roofHeightFt) * (between(1.0, 0.7, areaFt2) + INTERNAL);
    }

    /**
     * Outward pressure, psf, above 0.
     *
     * @param nearCorner zone 5
     */
    public static double outwardPsf(DesignWind wind, double roofHeightFt, double areaFt2, boolean nearCorner) {
        return velocityPsf(wind, roofHeightFt) * (between(nearCorner ? 1.4 : 1.1, 0.8, areaFt2) + INTERNAL);
    }

    /**
     * How far from a corner zone 5 reaches, ft: a tenth of the least width or 0.4 of the height, whichever is less, and 3 ft at least.
     */
    public static double cornerFt(double leastWidthFt, double roofHeightFt) {
        return Math.max(3, Math.min(0.1 * leastWidthFt, 0.4 * roofHeightFt));
    }

    private static double velocityPsf(DesignWind wind, double roofHeightFt) {
        return ALLOWABLE_STRESS
                * VELOCITY_PRESSURE
                * exposureCoefficient(wind.exposure(), roofHeightFt)
                * DIRECTIONALITY
                * wind.speedMph()
                * wind.speedMph();
    }

    /** K_z at a mean roof height, ft. */
    static double exposureCoefficient(ExposureCategory exposure, double roofHeightFt) {
        Check.within("mean roof height", roofHeightFt, 0, HIGHEST_FT);
        double[] rows =
                switch (exposure) {
                    case B -> new double[] {0.70, 0.70, 0.70, 0.70, 0.70, 0.76, 0.81, 0.85};
                    case C -> new double[] {0.85, 0.85, 0.90, 0.94, 0.98, 1.04, 1.09, 1.13};
                    case D -> new double[] {1.03, 1.03, 1.08, 1.12, 1.16, 1.22, 1.27, 1.31};
                };
        PolynomialSplineFunction row = new LinearInterpolator().interpolate(HEIGHTS_FT, rows);
        return row.value(roofHeightFt);
    }

    /** A coefficient that goes with the logarithm of the area from one value at 10 ft² to another at 500 ft². */
    private static double between(double small, double large, double areaFt2) {
        double bounded = Math.max(SMALL_FT2, Math.min(LARGE_FT2, areaFt2));
        return small + (large - small) * Math.log(bounded / SMALL_FT2) / Math.log(LARGE_FT2 / SMALL_FT2);
    }
}
