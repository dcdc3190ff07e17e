package weatherlap.analysis.calibration;

import weatherlap.sim.Check;

/**
 * How a calibration weighs the tables against the jobs.
 *
 * @param paceSpread coefficient of variation of the pace from shop to shop, over and above the ranges of the steps
 * @param noiseDegrees how many jobs' residuals the scenario's spread of a crew counts for
 * @param crewSpread coefficient of variation of the pace from crew to crew of a shop
 * @param crewDegrees how many crews that counts for
 * @param driftSpread standard deviation of the drift of the pace a year, from shop to shop
 * @param confidence of the intervals, fraction
 * @param folds parts for the held-out error, 2 or more; 0: none is held out
 * @param outlierLimit robust standard deviations beyond which a job is set aside
 * @see "Iglewicz, Hoaglin 1993, How to Detect and Handle Outliers (the limit of 3.5 on the median absolute deviation)"
 */
public record CalibrationOptions(
        double paceSpread,
        double noiseDegrees,
        double crewSpread,
        double crewDegrees,
        double driftSpread,
        double confidence,
        int folds,
        double outlierLimit) {
    /**
     * A pace that differs by a tenth from shop to shop and, as much as two crews would tell, from crew to crew, and by a twentieth a year
     * (judgement); 90 % intervals; ten folds.
     */
    public static final CalibrationOptions ORDINARY = new CalibrationOptions(0.1, 4, 0.1, 2, 0.05, 0.9, 10, 3.5);

    public CalibrationOptions {
        Check.within("pace spread", paceSpread, 0, 5);
        Check.notNegative("noise degrees", noiseDegrees);
        Check.positive("crew spread", crewSpread);
        Check.notNegative("crew degrees", crewDegrees);
        Check.positive("drift spread", driftSpread);
        Check.within("confidence", confidence, 0.01, 0.999);
        Check.within("folds", folds, folds == 0 ? 0 : 2, 1000);
        Check.positive("outlier limit", outlierLimit);
    }

    /** The same without holding jobs out. */
    public CalibrationOptions withoutHeldOut() {
        return new CalibrationOptions(
                paceSpread, noiseDegrees, crewSpread, crewDegrees, driftSpread, confidence, 0, outlierLimit);
    }
}
