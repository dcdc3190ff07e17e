package weatherlap.sim.labour;

import weatherlap.sim.Kept;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.LabourStep;
import weatherlap.sim.house.House;

/** The steps of some assumptions at their pace, which houses of as many openings share. Safe to share between threads. */
public final class Paces {
    private static final int MOST_STOREYS = 4;

    /** Paces that are kept: some 5 MB. */
    private static final int MOST_KEPT = 256;

    private final Assumptions assumptions;
    private final LabourStep[] steps;
    /** By twice the openings of a house, one more where its work is lead-safe. */
    private final Kept<Integer, OfHouse> known = new Kept<>(MOST_KEPT);

    public Paces(Assumptions assumptions) {
        this.assumptions = assumptions;
        steps = assumptions.steps().toArray(LabourStep[]::new);
    }

    public Assumptions assumptions() {
        return assumptions;
    }

    /** In the order of their table; read them, do not write. */
    LabourStep[] steps() {
        return steps;
    }

    /**
     * The pace at a house, and its steps where they have the same factors, by their place in the table, each when it first applies.
     *
     * @param shared counted by the house
     * @param byStorey at openings, the first storey at 0
     */
    @SuppressWarnings("ArrayRecordComponent") // filled as they are asked for
    record OfHouse(Pace pace, PacedStep[] shared, PacedStep[][] byStorey) {}

    OfHouse of(House house) {
        int openings = house.openingCount();
        int kind = 2 * openings + (house.leadSafe() ? 1 : 0);
        OfHouse pace = known.get(kind);
        return pace != null
                ? pace
                : known.keep(
                        kind,
                        new OfHouse(
                                new Pace(assumptions.scenario(), openings, house.leadSafe()),
                                new PacedStep[steps.length],
                                new PacedStep[MOST_STOREYS][steps.length]));
    }
}
