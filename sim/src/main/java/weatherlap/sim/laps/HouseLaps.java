package weatherlap.sim.laps;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
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

    /** Facts of each opening of the house after the work of each method, by the opening itself. */
    private final Map<Opening, Map<Method, Map<Fact, String>>> facts;

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

    private HouseLaps(
            House house, LeakTables tables, List<Belief> beliefs, Map<Opening, Map<Method, Map<Fact, String>>> facts) {
        this.house = house;
        this.tables = tables;
        this.facts = facts;
        reliability = tables.scalar(Scalar.INSPECTION_RELIABILITY);
        this.beliefs = beliefs;
    }

    public static HouseLaps of(House house, LeakTables tables) {
        HouseLaps laps = new HouseLaps(house, tables, new ArrayList<>(), new IdentityHashMap<>());
        laps.believe();
        return laps;
    }

    private void believe() {
        Scenario scenario = tables.assumptions().scenario();
        List<Opening> openings = house.openings().toList();
        openings.forEach(opening -> facts.put(opening, Facts.byMethod(house, opening, scenario)));
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
                                .after(openings.stream()
                                        .filter(opening -> canStandToday(fault, facts.get(opening)))
                                        .map(opening -> Likelihood.of(fault, opening, reliability))
                                        .toList()));
            }
        }
    }

    private void believe(double prior, SharedQuality quality) {
        beliefs.add(new Belief(prior, quality, tables.strata().of(quality), new ConcurrentHashMap<>()));
    }

    /** What lap faults may ask of an opening of the house after the work of a method. */
    Map<Fact, String> facts(Opening opening, Method after) {
        Map<Method, Map<Fact, String>> known = facts.get(opening);
        return known == null
                ? Facts.of(house, opening, after, tables.assumptions().scenario())
                : known.get(after);
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
        return new HouseLaps(house, other, beliefs, facts);
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

    /** Probability that a fault that can stand at an opening does, after the evidence. */
    public double probability(int fault, Opening opening) {
        return standing(fault, opening).probability();
    }

    /** Whether a fault can stand at an opening after the work of a method. */
    public boolean canStand(int fault, Opening opening, Method after) {
        return fault(fault).canStand(after, facts(opening, after));
    }

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
