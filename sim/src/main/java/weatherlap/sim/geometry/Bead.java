package weatherlap.sim.geometry;

import weatherlap.sim.Units;

/**
 * Sealant by volume: a bead of width w has the section below, and a package of volume V yields V/section. Tables in print are often
 * wrong by two; the volume is not.
 */
public enum Bead {
    /** w × w. */
    SQUARE(1),
    /** A round bead of diameter w: πw²/4. */
    ROUND(Math.PI / 4),
    /** A fillet with legs w: w²/2. */
    FILLET(0.5);

    private final double sectionOfUnit;

    Bead(double sectionOfUnit) {
        this.sectionOfUnit = sectionOfUnit;
    }

    public double sectionIn2(double widthIn) {
        return sectionOfUnit * widthIn * widthIn;
    }

    /** Feet of bead from a package of so many US fluid ounces. */
    public double yieldFt(double widthIn, double packageFluidOunces) {
        double volumeIn3 = packageFluidOunces * Units.CUBIC_INCHES_PER_FLUID_OUNCE;
        return Units.inchesToFeet(volumeIn3 / sectionIn2(widthIn));
    }
}
