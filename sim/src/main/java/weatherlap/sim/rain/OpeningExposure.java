package weatherlap.sim.rain;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import weatherlap.sim.Check;
import weatherlap.sim.assumptions.Joint;

/**
 * The water that wind-driven rain brings to one opening.
 *
 * @param freeLitresPerM2Year driving rain on this wall at the opening's height without the eave, mean of the years, L/m²
 * @param litresPerM2Year the same with the eave, mean from head to sill
 * @param shelterFraction share of the free driving rain that the overhang keeps off, 0 to 1
 * @param litresPerYear water that arrives at each joint of the opening, L a year
 * @param yearSpread coefficient of variation of the annual driving rain on this wall from year to year
 * @param spellLitresPerM2 the design spell on this wall without the eave (by default the one not exceeded in 67 % of years), L/m²
 */
public record OpeningExposure(
        double freeLitresPerM2Year,
        double litresPerM2Year,
        double shelterFraction,
        Map<Joint, Double> litresPerYear,
        double yearSpread,
        double spellLitresPerM2) {
    public OpeningExposure {
        Check.notNegative("free driving rain", freeLitresPerM2Year);
        Check.notNegative("driving rain", litresPerM2Year);
        Check.fraction("shelter fraction", shelterFraction);
        Check.notNegative("year spread", yearSpread);
        Check.notNegative("spell", spellLitresPerM2);
        litresPerYear.forEach((joint, litres) -> Check.notNegative("water at the ", joint, litres));
        litresPerYear = Collections.unmodifiableMap(new EnumMap<>(litresPerYear));
    }

    public double litresPerYear(Joint joint) {
        Double litres = litresPerYear.get(joint);
        return litres == null ? 0 : litres;
    }
}
