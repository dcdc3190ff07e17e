package weatherlap.sim.labour;

import java.util.List;
import weatherlap.sim.Check;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.explain.Amount;

/**
 * A step with the factors that hold for it at some place.
 *
 * @param place of the step in its table
 * @param meanMinutes of the step
 * @param factors see {@link LabourLine}
 * @param values of the factors
 * @param multiplier their product
 */
@SuppressWarnings("ArrayRecordComponent") // gone through at every opening
record PacedStep(
        int place, LabourStep step, double meanMinutes, List<Amount> factors, double[] values, double multiplier) {

    static PacedStep of(int place, LabourStep step, List<Amount> factors) {
        double[] values = new double[factors.size()];
        double multiplier = 1;
        for (int f = 0; f < values.length; f++) {
            values[f] = Check.positive(factors.get(f).name(), factors.get(f).value());
            multiplier *= values[f];
        }
        return new PacedStep(place, step, step.minutes().mean(), List.copyOf(factors), values, multiplier);
    }

    LabourLine line(double quantity) {
        return new LabourLine(step, quantity, factors);
    }

    /** The value of {@link LabourLine#meanMinutes}. */
    double minutes(double quantity) {
        double minutes = quantity * meanMinutes;
        for (double value : values) {
            minutes *= value;
        }
        return minutes;
    }
}
