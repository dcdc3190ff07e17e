package weatherlap.sim.assumptions;

/** Where water meets a window. */
public enum Joint {
    HEAD,
    JAMB,
    SILL,
    CORNER,
    FIELD
}
