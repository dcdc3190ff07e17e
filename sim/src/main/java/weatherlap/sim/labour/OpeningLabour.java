package weatherlap.sim.labour;

import java.util.List;
import weatherlap.sim.Each;

/** What one opening takes by itself: its {@link LabourLine}s as numbers, and as lines once somebody reads them. */
public final class OpeningLabour {
    private final PacedStep[] steps;
    private final double[] quantities;

    /**
     * @param steps that are done, in the order of the table
     * @param quantities one for each, above 0
     */
    OpeningLabour(PacedStep[] steps, double[] quantities) {
        this.steps = steps;
        this.quantities = quantities;
    }

    /** In the order of the table. */
    public List<LabourLine> lines() {
        return Each.upTo(steps.length, i -> steps[i].line(quantities[i]));
    }

    /** Mean person-minutes of all. */
    public double meanMinutes() {
        double minutes = 0;
        for (int i = 0; i < steps.length; i++) {
            minutes += steps[i].minutes(quantities[i]);
        }
        return minutes;
    }

    /** By step of the table, what a drawn value of its minutes is multiplied by. */
    public double[] weights(int allSteps) {
        double[] weights = new double[allSteps];
        for (int i = 0; i < steps.length; i++) {
            weights[steps[i].place()] = quantities[i] * steps[i].multiplier();
        }
        return weights;
    }

    /** Gives the mean person-minutes of each of its steps. */
    public void give(StepTaker taker) {
        for (int i = 0; i < steps.length; i++) {
            taker.take(steps[i].place(), steps[i].minutes(quantities[i]));
        }
    }

    /** Takes person-minutes of a step by its place in the table. */
    @FunctionalInterface
    public interface StepTaker {
        void take(int step, double minutes);
    }
}
