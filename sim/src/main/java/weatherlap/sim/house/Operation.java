package weatherlap.sim.house;

/** How a unit opens. */
public enum Operation {
    DOUBLE_HUNG,
    SINGLE_HUNG,
    SLIDER,
    CASEMENT,
    AWNING,
    PICTURE
}
