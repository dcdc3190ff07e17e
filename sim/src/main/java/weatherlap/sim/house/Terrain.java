package weatherlap.sim.house;

/** Roughness of the ground upwind; the four categories of ISO 15927-3:2009. */
public enum Terrain {
    OPEN_SEA_OR_FLAT,
    FARMLAND,
    SUBURBAN,
    URBAN
}
