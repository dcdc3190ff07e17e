package weatherlap.sim.wind;

/** Ground over which the wind comes, by the letters of ASCE 7. */
public enum ExposureCategory {
    /** Towns, suburbs, woods: closely spaced obstructions as tall as a house. */
    B,
    /** Open country with scattered obstructions lower than 30 ft. */
    C,
    /** Flat, unobstructed ground and water. */
    D
}
