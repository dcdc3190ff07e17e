package weatherlap.sim.laps;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.stream.IntStream;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.Facts;
import weatherlap.sim.assumptions.FaultKind;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.method.Method;

/**
 * What is believed of the laps of one house after all that was seen at its openings.
 *
 * <p>Each fault has its own {@link SharedQuality}, updated by the sights of that fault at every opening of the house. Given θ, the fault
 * stands at an opening whose own sight has the likelihoods l and m with probability θ·l/(θ·l + (1 − θ)·m), which is exact. In the
 * simulation the θ of all faults share one uniform a house (bad houses are bad throughout), but evidence for one fault is not carried
 * over to the others.
 */
public final class HouseLaps {
    private final House house;
    private final LeakTables tables;
    private final double reliability;
    private final List<Belief> beliefs;

    /**
     * Of one fault.
     *
     * @param prior probability before anyone looked
     * @param quality after the evidence
     * @param strata of the quality
     * @param standing by what is seen at an opening; openings where the same is seen share it
     */
    @SuppressWarnings("ArrayRecordComponent") // column of the hot loop
    private record Belief(
            double prior, SharedQuality quality, double[] strata, ConcurrentMap<Likelihood, Standing> standing) {}

    private HouseLaps(House house, LeakTables tables, List<Belief> beliefs) {
        this.house = house;
        this.tables = tables;
        reliability = tables.scalar(Scalar.INSPECTION_RELIABILITY);
        this.beliefs = beliefs;
    }

    public static HouseLaps of(House house, LeakTables tables) {
        HouseLaps laps = new HouseLaps(house, tables, new ArrayList<>());
        laps.believe();
        return laps;
    }

    private void believe() {
        Scenario scenario = tables.assumptions().scenario();
        List<Opening> openings = house.openings().toList();
        List<Map<Method, Map<Fact, String>>> facts =
                openings.stream().map(opening -> factsAfter(opening, scenario)).toList();
        List<LapFault> faults = tables.assumptions().faults();
        for (int f = 0; f < faults.size(); f++) {
            LapFault fault = faults.get(f);
            if (fault.kind() == FaultKind.NEW) {
                believe(tables.crew(f).mean(), tables.crew(f));
            } else {
                double prior = FaultPrior.of(fault, house);
                believe(
                        prior,
                        SharedQuality.of(prior, tables.scalar(Scalar.HOUSE_CORRELATION))
                                .after(IntStream.range(0, openings.size())
                                        .filter(o -> canStandToday(fault, facts.get(o)))
                                        .mapToObj(o -> Likelihood.of(fault, openings.get(o), reliability))
                                        .toList()));
            }
        }
    }

    private void believe(double prior, SharedQuality quality) {
        beliefs.add(new Belief(prior, quality, tables.strata().of(quality), new ConcurrentHashMap<>()));
    }

    private Map<Method, Map<Fact, String>> factsAfter(Opening opening, Scenario scenario) {
        Map<Method, Map<Fact, String>> facts = new EnumMap<>(Method.class);
        for (Method method : Method.values()) {
            facts.put(method, Facts.of(house, opening, method, scenario));
        }
        return facts;
    }

    /** An existing fault can stand at an opening where some method would leave it there. */
    private static boolean canStandToday(LapFault fault, Map<Method, Map<Fact, String>> facts) {
        for (Map.Entry<Method, Map<Fact, String>> after : facts.entrySet()) {
            if (fault.canStand(after.getKey(), after.getValue())) {
                return true;
            }
        }
        return false;
    }

    /** The same beliefs beside tables that differ in nothing that they rest on. */
    public HouseLaps beside(LeakTables other) {
        return new HouseLaps(house, other, beliefs);
    }

    public House house() {
        return house;
    }

    public LeakTables tables() {
        return tables;
    }

    /** The belief after the evidence, of a fault by its position in the table of faults. */
    public SharedQuality quality(int fault) {
        return beliefs.get(fault).quality();
    }

    /** Probability before anyone looked: of the house for an existing fault, of the crew for a new one. */
    public double prior(int fault) {
        return beliefs.get(fault).prior();
    }

    /** What the notes on an opening say of a fault. */
    Likelihood sight(int fault, Opening opening) {
        return Likelihood.of(fault(fault), opening, reliability);
    }

    /**
     * Probability that a fault stands at an opening, after the evidence.
     *
     * @param probability over all qualities
     * @param byStratum given the stratum of the quality of the house (or crew)
     */
    @SuppressWarnings("ArrayRecordComponent") // column of the hot loop
    record Standing(double probability, double[] byStratum) {}

    Standing standing(int fault, Opening opening) {
        Belief belief = beliefs.get(fault);
        return belief.standing().computeIfAbsent(sight(fault, opening), sight -> standing(belief, sight));
    }

    private static Standing standing(Belief belief, Likelihood sight) {
        double[] shared = belief.strata();
        if (sight.saysNothing()) {
            return new Standing(belief.quality().mean(), shared);
        }
        double[] own = new double[shared.length];
        double sum = 0;
        for (int i = 0; i < own.length; i++) {
            own[i] = sight.update(shared[i]);
            sum += own[i];
        }
        return new Standing(Math.min(1, sum / own.length), own);
    }

    private LapFault fault(int index) {
        return tables.assumptions().faults().get(index);
    }
}
