package weatherlap.sim.house;

import java.util.List;
import java.util.OptionalDouble;
import weatherlap.sim.Check;
import weatherlap.sim.Units;

/**
 * One wall of a house.
 *
 * @param id key within the house
 * @param bearingDeg outward normal, degrees clockwise from north, 0 to below 360
 * @param widthFt wall width, ft, above 0
 * @param eaveHeightFt height of the eave over grade, ft, above 0
 * @param overhangIn horizontal projection of the eave at this wall, in., 0 at a bare gable
 * @param courseExposureIn height of one siding course, in.; empty where there are no courses
 * @param panelLengthIn length of one siding panel, in.; empty likewise
 * @param sidingCondition whether it will go back
 * @param obstructionM distance to the nearest upwind obstacle as tall as the wall, m; empty: none
 * @param openings in table order
 */
public record Elevation(
        String id,
        double bearingDeg,
        double widthFt,
        double eaveHeightFt,
        double overhangIn,
        OptionalDouble courseExposureIn,
        OptionalDouble panelLengthIn,
        SidingCondition sidingCondition,
        OptionalDouble obstructionM,
        List<Opening> openings) {
    public Elevation {
        Check.text("elevation id", id);
        Check.within("bearing", bearingDeg, 0, Math.nextDown(360.0));
        Check.positive("wall width", widthFt);
        Check.positive("eave height", eaveHeightFt);
        Check.notNegative("overhang", overhangIn);
        openings = List.copyOf(openings);
    }

    /** The same with other openings. */
    public Elevation with(List<Opening> others) {
        return new Elevation(
                id,
                bearingDeg,
                widthFt,
                eaveHeightFt,
                overhangIn,
                courseExposureIn,
                panelLengthIn,
                sidingCondition,
                obstructionM,
                others);
    }

    public double widthIn() {
        return Units.feetToInches(widthFt);
    }

    public double eaveHeightIn() {
        return Units.feetToInches(eaveHeightFt);
    }
}
