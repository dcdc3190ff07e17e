package weatherlap.sim.laps;

import java.util.List;
import java.util.Map;
import weatherlap.sim.assumptions.Era;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.House;

/**
 * How probable an existing fault is before anyone looks: the row's prior for the barrier, its odds p/(1 − p) times the row's factor for the
 * era. An unknown barrier is a mixture of the three known ones in equal parts (judgement).
 */
final class FaultPrior {
    private static final List<Barrier> KNOWN = List.of(Barrier.HOUSEWRAP, Barrier.BUILDING_PAPER, Barrier.NONE);

    private FaultPrior() {}

    static double of(LapFault fault, House house) {
        double odds = fault.oddsByEra().getOrDefault(Era.of(house.yearBuilt()), 1.0);
        return timesOdds(byBarrier(fault, house.barrier()), odds);
    }

    static double byBarrier(LapFault fault, Barrier barrier) {
        return barrier != Barrier.UNKNOWN
                ? given(fault, fault.priorByBarrier(), barrier)
                : KNOWN.stream()
                        .mapToDouble(b -> given(fault, fault.priorByBarrier(), b))
                        .average()
                        .orElseThrow();
    }

    static double timesOdds(double probability, double factor) {
        return probability * factor / (1 - probability + probability * factor);
    }

    static <K> double given(LapFault fault, Map<K, Double> priors, K key) {
        Double prior = priors.get(key);
        if (prior == null) {
            throw new IllegalArgumentException("lap-faults.csv:" + fault.id() + " has no prior for " + key);
        }
        return prior;
    }
}
