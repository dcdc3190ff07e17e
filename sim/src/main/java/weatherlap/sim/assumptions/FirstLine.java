package weatherlap.sim.assumptions;

/** What water meets before it reaches a lap: the line of defence in front of the barrier. */
public enum FirstLine {
    SEALANT,
    CAPPING,
    CLADDING,
    NONE
}
