package weatherlap.sim.laps;

import java.util.List;
import java.util.Map;
import weatherlap.sim.assumptions.Era;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.house.Barrier;
import weatherlap.sim.house.House;

/**
 * How probable an existing fault is before anyone looks: the row's prior for the barrier, its odds p/(1 − p) times the row's factor for the
 * era. An unknown barrier is each of the three known ones with the same chance (judgement), and the prior the mean over them after the
 * odds. Where the record says that there is none and somebody saw a lap of it, one exists and nobody knows which.
 */
final class FaultPrior {
    private static final List<Barrier> EXISTING = List.of(Barrier.HOUSEWRAP, Barrier.BUILDING_PAPER);
    private static final List<Barrier> KNOWN = List.of(Barrier.HOUSEWRAP, Barrier.BUILDING_PAPER, Barrier.NONE);

    private FaultPrior() {}

    /**
     * What the priors of a house go by.
     *
     * @param barriers that it may have, each with the same chance
     */
    record Ground(List<Barrier> barriers, Era era) {
        static Ground of(House house) {
            return new Ground(possible(house), Era.of(house.yearBuilt()));
        }
    }

    static double of(LapFault fault, Ground ground) {
        return mean(fault, ground.barriers(), fault.oddsByEra().getOrDefault(ground.era(), 1.0));
    }

    /** Before the odds of the era. */
    static double byBarrier(LapFault fault, House house) {
        return mean(fault, possible(house), 1);
    }

    private static double mean(LapFault fault, List<Barrier> possible, double odds) {
        double sum = 0;
        for (Barrier one : possible) {
            sum += timesOdds(given(fault, fault.priorByBarrier(), one), odds);
        }
        return sum / possible.size();
    }

    private static List<Barrier> possible(House house) {
        return switch (house.barrier()) {
            case UNKNOWN -> KNOWN;
            case NONE ->
                house.openings().anyMatch(opening -> opening.laps().showBarrier()) ? EXISTING : List.of(Barrier.NONE);
            case HOUSEWRAP, BUILDING_PAPER -> List.of(house.barrier());
        };
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
