package weatherlap.sim.laps;

import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import weatherlap.sim.assumptions.Facts;
import weatherlap.sim.assumptions.FaultKind;
import weatherlap.sim.assumptions.FirstLine;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;
import weatherlap.sim.laps.Belief.Standing;
import weatherlap.sim.method.Method;
import weatherlap.sim.method.MethodScope;

/**
 * What is believed of the laps of one house after all that was seen at its openings.
 *
 * <p>Each fault has its own {@link SharedQuality}, updated by the sights of that fault at every opening of the house. Given θ, the fault
 * stands at an opening whose own sight has the likelihoods l and m with probability θ·l/(θ·l + (1 − θ)·m), which is exact. In the
 * simulation the θ of all faults share one uniform a house (bad houses are bad throughout), but evidence for one fault is not carried
 * over to the others.
 */
public final class HouseLaps {
    private static final int FIRST_LINES = FirstLine.values().length;

    private final House house;
    private final LeakTables tables;
    private final Belief[] beliefs;

    /** By ordinal, when it was first asked for; the same whoever asks first. */
    private final LeakTables.Compiled[] firstLines = new LeakTables.Compiled[FIRST_LINES];

    /** By the opening itself. */
    private final Map<Opening, AtOpening> openings;

    private HouseLaps(House house, LeakTables tables, Belief[] beliefs, Map<Opening, AtOpening> openings) {
        this.house = house;
        this.tables = tables;
        this.beliefs = beliefs;
        this.openings = openings;
    }

    public static HouseLaps of(House house, LeakTables tables) {
        HouseLaps laps = new HouseLaps(house, tables, new Belief[tables.faults().length], new IdentityHashMap<>());
        laps.believe();
        return laps;
    }

    private void believe() {
        AtOpening[] all = new AtOpening[house.openingCount()];
        int count = 0;
        for (Elevation wall : house.elevations()) {
            for (Opening opening : wall.openings()) {
                all[count] = new AtOpening(opening);
                openings.put(opening, all[count++]);
            }
        }
        List<Belief> untold = tables.untold(FaultPrior.Ground.of(house));
        int[] telling = new int[count];
        for (int f = 0; f < beliefs.length; f++) {
            int told = tell(f, all, telling);
            Belief before = untold.get(f);
            beliefs[f] = told == 0 ? before : tables.told(f, before, Arrays.copyOf(telling, told));
        }
    }

    /** Puts down the numbers of what is seen of a fault and says something of it, where it can stand today; gives how many there are. */
    private int tell(int fault, AtOpening[] all, int[] telling) {
        int count = 0;
        if (tables.faults()[fault].kind() == FaultKind.EXISTING) {
            Sights sights = tables.sights(fault);
            for (AtOpening one : all) {
                int sight = sights.at(one.opening);
                if (sights.tells(sight) && one.canStandToday(fault)) {
                    telling[count++] = sight;
                }
            }
        }
        return count;
    }

    /** The laps of one opening. */
    final class AtOpening {
        private final Opening opening;
        /** By fault: the methods after whose work it can stand, each 1 &lt;&lt; ordinal. */
        private final int[] after;
        /** By fault, when it was first asked for; the same whoever asks first. */
        private final Standing[] standing;

        private AtOpening(Opening opening) {
            this.opening = opening;
            LapFault[] faults = tables.faults();
            after = new int[faults.length];
            standing = new Standing[faults.length];
            for (LeakTables.Alike alike : tables.alike()) {
                Facts known = Facts.of(
                        house, opening, alike.one(), tables.assumptions().scenario());
                for (int f = 0; f < after.length; f++) {
                    after[f] |= faults[f].standsAfter(alike.all(), known);
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
        boolean canStand(int fault, MethodScope methods) {
            return (after[fault] & methods.mask()) != 0;
        }

        /** Whether a fault can stand after the work of a method. */
        boolean canStand(int fault, Method method) {
            return (after[fault] >> method.ordinal() & 1) == 1;
        }

        Standing standing(int fault) {
            if (standing[fault] == null) {
                Sights sights = tables.sights(fault);
                standing[fault] = beliefs[fault].standing(sights, sights.at(opening));
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

    /** A first line behind the cladding of the house. */
    LeakTables.Compiled line(FirstLine first) {
        LeakTables.Compiled known = firstLines[first.ordinal()];
        if (known == null) {
            known = tables.compiled(first, house.cladding());
            firstLines[first.ordinal()] = known;
        }
        return known;
    }

    /** The belief after the evidence, of a fault by its position in the table of faults. */
    public SharedQuality quality(int fault) {
        return beliefs[fault].quality();
    }

    /** Probability before anyone looked: of the house for an existing fault, of the crew for a new one. */
    public double prior(int fault) {
        return beliefs[fault].prior();
    }

    /** What the notes on an opening say of a fault. */
    Likelihood sight(int fault, Opening opening) {
        Sights sights = tables.sights(fault);
        return sights.likelihood(sights.at(opening));
    }

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
}
