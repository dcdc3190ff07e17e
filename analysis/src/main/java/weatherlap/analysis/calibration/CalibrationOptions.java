package weatherlap.analysis.calibration;

import weatherlap.sim.Check;

/**
 * How a calibration weighs the tables against the jobs.
 *
 * @param paceSpread coefficient of variation of the pace from shop to shop, over and above the ranges of the steps
 * @param noiseDegrees how many jobs' residuals the scenario's spread of a crew counts for
 * @param confidence of the intervals, fraction
 * @param folds parts for the held-out error, 2 or more; 0: none is held out
 * @param outlierLimit robust standard deviations beyond which a job is set aside
 * @see "Iglewicz, Hoaglin 1993, How to Detect and Handle Outliers (the limit of 3.5 on the median absolute deviation)"
 */
public record CalibrationOptions(
        double paceSpread, double noiseDegrees, double confidence, int folds, double outlierLimit) {
    /** A pace that differs by a tenth from shop to shop (judgement); 90 % intervals; ten folds. */
    public static final CalibrationOptions ORDINARY = new CalibrationOptions(0.1, 4, 0.9, 10, 3.5);

    public CalibrationOptions {
        Check.within("pace spread", paceSpread, 0, 5);
        Check.notNegative("noise degrees", noiseDegrees);
        Check.within("confidence", confidence, 0.01, 0.999);
        Check.within("folds", folds, folds == 0 ? 0 : 2, 1000);
        Check.positive("outlier limit", outlierLimit);
    }
}
