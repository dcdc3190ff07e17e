package weatherlap.analysis.drivers;

import weatherlap.analysis.drivers.Houses.Difference;
import weatherlap.analysis.drivers.Houses.OneHouse;
import weatherlap.analysis.sensitivity.CubeModel;

/** One house as a function of the unit cube; a row of outcomes for each of {@link Outcome}. */
record RangedModel(RangedAssumptions assumptions, OneHouse house) implements CubeModel {

    @Override
    public double[][] outcomes(double[][] points) {
        double[][] outcomes = new double[Outcome.values().length][points.length];
        for (int i = 0; i < points.length; i++) {
            Difference found = house.at(assumptions.at(points[i]));
            outcomes[Outcome.COST_DIFFERENCE.ordinal()][i] = found.costUsd();
            outcomes[Outcome.RISK_DIFFERENCE.ordinal()][i] = found.risk();
        }
        return outcomes;
    }
}
