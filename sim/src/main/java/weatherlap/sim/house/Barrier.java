package weatherlap.sim.house;

/** The weather-resistive barrier behind the cladding. */
public enum Barrier {
    HOUSEWRAP,
    BUILDING_PAPER,
    NONE,
    UNKNOWN
}
