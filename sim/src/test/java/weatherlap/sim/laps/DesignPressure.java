package weatherlap.sim.laps;

import weatherlap.sim.Check;
import weatherlap.sim.Units;

/**
 * What a unit's rating says of the weather it was tested for. Water is tested at 15 % of the design pressure (20 % for class AW), at least
 * 2.90 and at most 12 psf; strength at 150 % of it. A pressure stands for the wind of that stagnation pressure, q = 0.00256 V² (psf, mph),
 * and lifts water over a dam by h = ΔP/(ρg), which is 9.80665 Pa a millimetre for water of 1000 kg/m³.
 *
 * @param designPsf design pressure, psf
 * @param architectural class AW
 * @see "NAFS, AAMA/WDMA/CSA 101/I.S.2/A440 (test pressures); ASCE 7 (0.00256, standard air)"
 */
record DesignPressure(double designPsf, boolean architectural) {
    private static final double LOWEST_WATER_PSF = 2.90;
    private static final double HIGHEST_WATER_PSF = 12;
    private static final double PSF_PER_SQUARE_MPH = 0.00256;
    private static final double PASCAL_PER_MILLIMETRE_OF_WATER = 9.80665;

    public DesignPressure {
        Check.positive("design pressure", designPsf);
    }

    /** Pressure of the water test, psf. */
    public double waterTestPsf() {
        double share = architectural ? 0.20 : 0.15;
        return Math.max(LOWEST_WATER_PSF, Math.min(HIGHEST_WATER_PSF, share * designPsf));
    }

    /** Pressure of the strength test, psf. */
    public double strengthTestPsf() {
        return 1.5 * designPsf;
    }

    /** Wind that the water test stands for, mph. */
    public double waterTestMph() {
        return windMph(waterTestPsf());
    }

    /** Wind that the design pressure stands for, mph. */
    public double designMph() {
        return windMph(designPsf);
    }

    /** Wind that the water test stands for, m/s. */
    public double waterTestMetresPerSecond() {
        return waterTestMph() * Units.METRES_PER_SECOND_PER_MPH;
    }

    /** Stagnation pressure of a wind, psf. */
    static double pressurePsf(double windMph) {
        return PSF_PER_SQUARE_MPH * windMph * windMph;
    }

    /** Wind of a stagnation pressure, mph. */
    static double windMph(double pressurePsf) {
        return Math.sqrt(pressurePsf / PSF_PER_SQUARE_MPH);
    }

    /** Height of the dam at the back of a sill that holds water against a pressure difference, mm. */
    static double backDamMillimetres(double pascal) {
        return Check.notNegative("pressure difference", pascal) / PASCAL_PER_MILLIMETRE_OF_WATER;
    }
}
