package weatherlap.analysis.breakeven;

/** The cost of the full flange less that of the insert as a function of one assumption. */
@FunctionalInterface
public interface DifferenceAt {
    /**
     * By draw, USD.
     *
     * @param value of the assumption, in its own unit; draw d is the same world at every value
     */
    double[] draws(double value);
}
