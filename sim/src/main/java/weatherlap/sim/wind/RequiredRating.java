package weatherlap.sim.wind;

import java.util.Optional;
import weatherlap.sim.Check;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;

/**
 * What the units of one opening must be rated for. Any part of an opening near a corner puts all of it there. The rating that is asked
 * for is the next performance grade of NAFS at or above the larger pressure: 15 psf and steps of 5; the water test that goes with a grade
 * is 15 % of it, 2.86 psf at least. Whether the glass of a unit stands that wind is its maker's to say: not ruled on here.
 *
 * @param nearCorner zone 5, else zone 4
 * @param areaFt2 of one unit, that the wind presses on
 * @param inwardPsf above 0
 * @param outwardPsf above 0
 * @see "AAMA/WDMA/CSA 101/I.S.2/A440, NAFS (standard; from memory)"
 */
public record RequiredRating(boolean nearCorner, double areaFt2, double inwardPsf, double outwardPsf) {
    private static final int LOWEST_GRADE_PSF = 15;
    private static final int GRADE_STEP_PSF = 5;
    private static final double WATER_SHARE = 0.15;
    private static final double LEAST_WATER_PSF = 2.86;
    /** Rounding error of the pressures does not ask for the next grade. */
    private static final double ROUNDING_PSF = 1e-9;

    public RequiredRating {
        Check.positive("area", areaFt2);
        Check.positive("inward pressure", inwardPsf);
        Check.positive("outward pressure", outwardPsf);
    }

    /**
     * Empty for a house taller than the method reaches.
     *
     * @param unitWidthIn of one unit, as ordered
     * @param unitHeightIn likewise
     * @param scenario gives the height of the roof over the eave
     */
    public static Optional<RequiredRating> of(
            DesignWind wind,
            House house,
            Elevation wall,
            Opening opening,
            double unitWidthIn,
            double unitHeightIn,
            Scenario scenario) {
        double roofFt = roofHeightFt(house, scenario);
        if (roofFt > WindPressure.HIGHEST_FT) {
            return Optional.empty();
        }
        double leastWidthFt = house.elevations().stream()
                .mapToDouble(Elevation::widthFt)
                .min()
                .orElseThrow();
        double cornerIn = Units.feetToInches(WindPressure.cornerFt(leastWidthFt, roofFt));
        boolean nearCorner = opening.place().leftIn() < cornerIn
                || opening.place().leftIn() + opening.frame().widthIn() > wall.widthIn() - cornerIn;
        double areaFt2 = Units.squareInchesToSquareFeet(unitWidthIn * unitHeightIn);
        return Optional.of(new RequiredRating(
                nearCorner,
                areaFt2,
                WindPressure.inwardPsf(wind, roofFt, areaFt2),
                WindPressure.outwardPsf(wind, roofFt, areaFt2, nearCorner)));
    }

    /** Mean roof height, ft: the highest eave and what the roof rises over it on the mean. */
    private static double roofHeightFt(House house, Scenario scenario) {
        double eaveFt = house.elevations().stream()
                .mapToDouble(Elevation::eaveHeightFt)
                .max()
                .orElseThrow();
        return eaveFt + scenario.value(Scalar.MEAN_ROOF_RISE_FT);
    }

    /** Performance grade to ask for, psf: both ways the same. */
    public int gradePsf() {
        double needed = Math.max(inwardPsf, outwardPsf) - ROUNDING_PSF;
        return Math.max(LOWEST_GRADE_PSF, GRADE_STEP_PSF * (int) Math.ceil(needed / GRADE_STEP_PSF));
    }

    /** The water test of that grade, psf. */
    public double waterPsf() {
        return waterPsf(gradePsf());
    }

    static double waterPsf(double gradePsf) {
        return Math.max(LEAST_WATER_PSF, WATER_SHARE * gradePsf);
    }
}
