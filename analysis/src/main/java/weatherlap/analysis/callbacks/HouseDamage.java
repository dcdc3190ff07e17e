package weatherlap.analysis.callbacks;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.OpeningExposure;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.run.LeakSimulator;

/** Leak damage that the model expects at one window within a time, −ln(1 − P), shared out over the fault groups as P is. */
final class HouseDamage {
    private static final double MOST_SURE = 1 - 1e-9;

    private final LeakSimulator simulator;
    private final List<FaultGroup> groups;

    /** @param draws a house, 1 or more */
    HouseDamage(Assumptions assumptions, int years, int draws) {
        simulator = new LeakSimulator(
                assumptions.with(assumptions.scenario().with(Scalar.HORIZON_YEARS, years)),
                assumptions.scenario().choice(Choice.SAMPLING, Sampling.class),
                draws,
                (long) assumptions.scenario().value(Scalar.SEED));
        groups = assumptions.faults().stream().map(FaultGroup::of).toList();
    }

    /** Mean over the windows of a house, by fault group. */
    Map<FaultGroup, Double> of(House house, Method method, List<OpeningExposure> rain) {
        Map<FaultGroup, Double> mean = new EnumMap<>(FaultGroup.class);
        List<double[]> openings = simulator.contributions(house, method, rain);
        for (double[] byFault : openings) {
            double chance = Math.min(MOST_SURE, Arrays.stream(byFault).sum());
            double perChance = chance > 0 ? -Math.log1p(-chance) / chance / openings.size() : 0;
            for (int f = 0; f < byFault.length; f++) {
                mean.merge(groups.get(f), perChance * byFault[f], Double::sum);
            }
        }
        return mean;
    }
}
