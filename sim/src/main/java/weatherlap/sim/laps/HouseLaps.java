package weatherlap.sim.laps;

import java.util.ArrayList;
import java.util.List;
import weatherlap.sim.assumptions.FaultKind;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.house.House;
import weatherlap.sim.house.Opening;

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
    private final List<SharedQuality> qualities = new ArrayList<>();
    private final List<double[]> strata = new ArrayList<>();

    private HouseLaps(House house, LeakTables tables) {
        this.house = house;
        this.tables = tables;
        reliability = tables.scalar(Scalar.INSPECTION_RELIABILITY);
        List<LapFault> faults = tables.assumptions().faults();
        for (int f = 0; f < faults.size(); f++) {
            LapFault fault = faults.get(f);
            SharedQuality quality = fault.kind() == FaultKind.NEW ? tables.crew(f) : existing(fault);
            qualities.add(quality);
            strata.add(tables.strata().of(quality));
        }
    }

    public static HouseLaps of(House house, LeakTables tables) {
        return new HouseLaps(house, tables);
    }

    private SharedQuality existing(LapFault fault) {
        return SharedQuality.of(FaultPrior.of(fault, house), tables.scalar(Scalar.HOUSE_CORRELATION))
                .after(house.openings()
                        .filter(opening -> fault.canStand(
                                house, opening, tables.assumptions().scenario()))
                        .map(opening -> Likelihood.of(fault, opening, reliability))
                        .toList());
    }

    public House house() {
        return house;
    }

    public LeakTables tables() {
        return tables;
    }

    /** The belief after the evidence, of a fault by its position in the table of faults. */
    public SharedQuality quality(int fault) {
        return qualities.get(fault);
    }

    /** Probability before anyone looked: of the house for an existing fault, of the crew for a new one. */
    public double prior(int fault) {
        LapFault row = fault(fault);
        return row.kind() == FaultKind.NEW ? tables.crew(fault).mean() : FaultPrior.of(row, house);
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
        Likelihood sight = sight(fault, opening);
        double[] shared = strata.get(fault);
        if (sight.saysNothing()) {
            return new Standing(quality(fault).mean(), shared);
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
