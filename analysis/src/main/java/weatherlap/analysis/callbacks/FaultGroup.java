package weatherlap.analysis.callbacks;

import weatherlap.sim.assumptions.FaultKind;
import weatherlap.sim.assumptions.LapFault;

/** Lap faults that records could tell apart, by how they come and go with the method, the house and the years. */
public enum FaultGroup {
    /** What was in the wall before. */
    OLD_LAPS("old laps"),
    /** What the crew did wrong, behind siding or open from the first day. */
    OWN_LAPS("laps of the shop"),
    /** Faults of the work that tell when the sealant or capping before them has failed. */
    SEALS("seals and capping");

    private final String label;

    FaultGroup(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    public static FaultGroup of(LapFault fault) {
        if (fault.kind() == FaultKind.EXISTING) {
            return OLD_LAPS;
        }
        return switch (fault.firstLine()) {
            case SEALANT, CAPPING -> SEALS;
            case CLADDING, NONE -> OWN_LAPS;
        };
    }
}
