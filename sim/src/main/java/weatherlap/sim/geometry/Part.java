package weatherlap.sim.geometry;

/** What hides the light at a place of an opening, or lets it in. */
public enum Part {
    GLASS,
    /** Stiles, rails and meeting rail, or the beads of a fixed lite. */
    SASH,
    FRAME,
    MULL_POST,
    /** Of the existing unit, left in place around an insert. */
    OLD_FRAME,
    /** Room to shim between a unit and what it goes into; covered by trim. */
    GAP
}
