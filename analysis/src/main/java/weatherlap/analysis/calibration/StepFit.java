package weatherlap.analysis.calibration;

import weatherlap.sim.assumptions.LabourStep;

/**
 * A fitted rate, in person-minutes for one unit of the step's driver.
 *
 * @param step as the tables have it
 * @param fittedMinutes posterior mean
 * @param standardError of it
 * @param lowMinutes lower end of the interval, 0 or more
 * @param highMinutes upper end
 * @param jobs in which the step occurred, outliers left out
 */
public record StepFit(
        LabourStep step, double fittedMinutes, double standardError, double lowMinutes, double highMinutes, int jobs) {
    public double priorMinutes() {
        return step.minutes().mean();
    }

    /** Whether a rate lies in the interval. */
    public boolean holds(double minutes) {
        return minutes >= lowMinutes && minutes <= highMinutes;
    }
}
