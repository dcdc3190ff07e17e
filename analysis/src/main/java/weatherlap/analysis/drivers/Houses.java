package weatherlap.analysis.drivers;

import weatherlap.sim.assumptions.Assumptions;

/** Houses whose two methods are set side by side under assumptions that hold no range any more. */
public interface Houses {
    int count();

    /**
     * One house as a model that keeps what it can from one point to the next.
     *
     * @param position from 0
     * @param base assumptions of which all asked about are variants
     */
    OneHouse house(int position, Assumptions base);

    /** One house. Not for several threads at once. */
    @FunctionalInterface
    interface OneHouse {
        Difference at(Assumptions known);
    }

    /**
     * First less second method of a contrast, means over what varies by luck.
     *
     * @param costUsd horizon cost, USD
     * @param risk chance of leak damage in the house, −1 to 1
     */
    record Difference(double costUsd, double risk) {}
}
