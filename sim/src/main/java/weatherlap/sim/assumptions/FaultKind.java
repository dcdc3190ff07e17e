package weatherlap.sim.assumptions;

/** Whether a lap fault is in the wall already or comes with the new work. */
public enum FaultKind {
    EXISTING,
    NEW
}
