package weatherlap.analysis.calibration;

/**
 * Error on jobs that a fit has not seen, outliers left out: root mean square of actual over expected hours, less 1.
 *
 * @param folds the jobs were split into
 * @param tables by the tables as they were, fraction
 * @param fitted by rates fitted to the other folds, fraction
 * @param tablesHours root mean square in person-hours
 * @param fittedHours likewise
 */
public record HeldOutError(int folds, int jobs, double tables, double fitted, double tablesHours, double fittedHours) {}
