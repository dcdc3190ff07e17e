package weatherlap.sim.house;

/** What lines the opening on the room side. */
public enum InteriorReturn {
    DRYWALL,
    WOOD_JAMB,
    PLASTER
}
