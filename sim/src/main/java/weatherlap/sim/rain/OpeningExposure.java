package weatherlap.sim.rain;

import java.util.Map;
import weatherlap.sim.Check;
import weatherlap.sim.assumptions.Joint;

/**
 * The water that wind-driven rain brings to one opening.
 *
 * @param freeLitresPerM2Year driving rain on this wall at the opening's height without the eave, mean of the years, L/m²
 * @param litresPerM2Year the same with the eave, mean from head to sill
 * @param shelterFraction share of the free driving rain that the overhang keeps off, 0 to 1
 * @param atJoints water that arrives at each joint of the opening, by its ordinal, L a year
 * @param yearSpread coefficient of variation of the annual driving rain on this wall from year to year
 * @param spellLitresPerM2 the design spell on this wall without the eave (by default the one not exceeded in 67 % of years), L/m²
 */
@SuppressWarnings("ArrayRecordComponent") // made and read at every opening, compared by nobody
public record OpeningExposure(
        double freeLitresPerM2Year,
        double litresPerM2Year,
        double shelterFraction,
        double[] atJoints,
        double yearSpread,
        double spellLitresPerM2) {
    private static final Joint[] JOINTS = Joint.values();

    public OpeningExposure {
        Check.notNegative("free driving rain", freeLitresPerM2Year);
        Check.notNegative("driving rain", litresPerM2Year);
        Check.fraction("shelter fraction", shelterFraction);
        Check.notNegative("year spread", yearSpread);
        Check.notNegative("spell", spellLitresPerM2);
        for (Joint joint : JOINTS) {
            Check.notNegative("water at the ", joint, atJoints[joint.ordinal()]);
        }
    }

    /** @param litresPerYear at joints, none at those that it lacks */
    public OpeningExposure(
            double freeLitresPerM2Year,
            double litresPerM2Year,
            double shelterFraction,
            Map<Joint, Double> litresPerYear,
            double yearSpread,
            double spellLitresPerM2) {
        this(
                freeLitresPerM2Year,
                litresPerM2Year,
                shelterFraction,
                byOrdinal(litresPerYear),
                yearSpread,
                spellLitresPerM2);
    }

    private static double[] byOrdinal(Map<Joint, Double> litres) {
        double[] atJoints = new double[JOINTS.length];
        litres.forEach((joint, some) -> atJoints[joint.ordinal()] = some);
        return atJoints;
    }

    /** Water that arrives at a joint, L a year. */
    public double litresPerYear(Joint joint) {
        return atJoints[joint.ordinal()];
    }
}
