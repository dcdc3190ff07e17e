package weatherlap.sim.assumptions;

/** How a crew works when nobody looks. */
public enum Workmanship {
    CAREFUL,
    TYPICAL,
    HURRIED
}
