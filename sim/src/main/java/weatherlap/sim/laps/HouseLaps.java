package weatherlap.sim.laps;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import weatherlap.sim.Each;
import weatherlap.sim.assumptions.Fact;
import weatherlap.sim.assumptions.Facts;
import weatherlap.sim.assumptions.FaultKind;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Scalar;
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

    /** By the opening itself. */
    private final Map<Opening, AtOpening> openings;

    /**
     * Of one fault.
     *
     * @param prior probability before anyone looked
     * @param quality after the evidence
     * @param unseen where nothing is seen at an opening that tells of it; by the strata of the quality
     * @param standing by what is seen at an opening; openings where the same is seen share it
     */
    private record Belief(
            double prior, SharedQuality quality, Standing unseen, ConcurrentMap<Likelihood, Standing> standing) {}

    private HouseLaps(House house, LeakTables tables, List<Belief> beliefs, Map<Opening, AtOpening> openings) {
        this.house = house;
        this.tables = tables;
        this.openings = openings;
        reliability = tables.scalar(Scalar.INSPECTION_RELIABILITY);
        this.beliefs = beliefs;
    }

    public static HouseLaps of(House house, LeakTables tables) {
        HouseLaps laps = new HouseLaps(house, tables, new ArrayList<>(), new IdentityHashMap<>());
        laps.believe();
        return laps;
    }

    private void believe() {
        List<AtOpening> all = Each.of(house.openings().toList(), AtOpening::new);
        all.forEach(one -> openings.put(one.opening, one));
        List<LapFault> faults = tables.assumptions().faults();
        for (int f = 0; f < faults.size(); f++) {
            if (faults.get(f).kind() == FaultKind.NEW) {
                believe(tables.crew(f), List.of());
            } else {
                SharedQuality prior =
                        SharedQuality.of(FaultPrior.of(faults.get(f), house), tables.scalar(Scalar.HOUSE_CORRELATION));
                List<Likelihood> sights = new ArrayList<>();
                for (AtOpening one : all) {
                    if (one.canStandToday(f)) {
                        sights.add(one.sights.get(f));
                    }
                }
                believe(prior, sights);
            }
        }
    }

    private void believe(SharedQuality prior, List<Likelihood> sights) {
        SharedQuality quality = prior.after(sights);
        double[] strata =
                quality.equals(prior) ? tables.untold(prior) : tables.strata().of(quality);
        Standing unseen = new Standing(quality.mean(), strata);
        beliefs.add(new Belief(prior.mean(), quality, unseen, new ConcurrentHashMap<>()));
    }

    /** The laps of one opening. */
    final class AtOpening {
        private final Opening opening;
        /** By fault: what the notes on it say. */
        private final List<Likelihood> sights;
        /** By fault: the methods after whose work it can stand, each 1 &lt;&lt; ordinal. */
        private final int[] after;
        /** By fault, when it was first asked for; the same whoever asks first. */
        private final Standing[] standing;

        private AtOpening(Opening opening) {
            this.opening = opening;
            List<LapFault> faults = tables.assumptions().faults();
            sights = Each.of(faults, fault -> Likelihood.of(fault, opening, reliability));
            after = new int[faults.size()];
            standing = new Standing[faults.size()];
            Map<Method, Map<Fact, String>> facts =
                    Facts.byMethod(house, opening, tables.assumptions().scenario());
            for (Method method : facts.keySet()) {
                Map<Fact, String> known = facts.get(method);
                for (int f = 0; f < after.length; f++) {
                    after[f] |= faults.get(f).canStand(method, known) ? 1 << method.ordinal() : 0;
                }
            }
        }

        /** An existing fault can stand where some method would leave it there. */
        private boolean canStandToday(int fault) {
            return after[fault] != 0;
        }

        int faults() {
            return after.length;
        }

        /** Whether a fault can stand after the work of one of some methods. */
        boolean canStand(int fault, List<Method> methods) {
            for (Method method : methods) {
                if (canStand(fault, method)) {
                    return true;
                }
            }
            return false;
        }

        /** Whether a fault can stand after the work of a method. */
        boolean canStand(int fault, Method method) {
            return (after[fault] >> method.ordinal() & 1) == 1;
        }

        Standing standing(int fault) {
            if (standing[fault] == null) {
                Belief belief = beliefs.get(fault);
                Likelihood seen = sights.get(fault);
                standing[fault] = seen.saysNothing()
                        ? belief.unseen()
                        : belief.standing().computeIfAbsent(seen, sight -> HouseLaps.standing(belief, sight));
            }
            return standing[fault];
        }
    }

    AtOpening at(Opening opening) {
        AtOpening known = openings.get(opening);
        return known == null ? new AtOpening(opening) : known;
    }

    /** The same beliefs beside tables that differ in nothing that they rest on. */
    public HouseLaps beside(LeakTables other) {
        return new HouseLaps(house, other, beliefs, openings);
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
        return at(opening).sights.get(fault);
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
        return at(opening).canStand(fault, after);
    }

    Standing standing(int fault, Opening opening) {
        return at(opening).standing(fault);
    }

    private static Standing standing(Belief belief, Likelihood sight) {
        double[] shared = belief.unseen().byStratum();
        double[] own = new double[shared.length];
        double sum = 0;
        for (int i = 0; i < own.length; i++) {
            own[i] = sight.update(shared[i]);
            sum += own[i];
        }
        return new Standing(Math.min(1, sum / own.length), own);
    }
}
