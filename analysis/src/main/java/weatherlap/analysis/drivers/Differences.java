package weatherlap.analysis.drivers;

import org.apache.commons.math3.stat.StatUtils;
import weatherlap.sim.assumptions.Assumptions;

/**
 * Full flange less insert, house by house, means over what varies by luck.
 *
 * @param costUsd horizon cost, USD
 * @param risk chance of leak damage in the house, −1 to 1
 */
@SuppressWarnings("ArrayRecordComponent") // one column a house, handed on at once
public record Differences(double[] costUsd, double[] risk) {

    /** Works the differences of a fixed set of houses out anew from assumptions that hold no range any more. */
    @FunctionalInterface
    public interface Model {
        Differences at(Assumptions known);

        /**
         * The same for a part of the houses, as far as they can be dealt out.
         *
         * @param position of the part, 0 to less than parts
         */
        default Model part(int position, int parts) {
            return this;
        }
    }

    /** The mean over the houses of each outcome. */
    double[] means() {
        return new double[] {StatUtils.mean(costUsd), StatUtils.mean(risk)};
    }
}
