package weatherlap.sim.house;

/** What the opening lights. */
public enum Room {
    BEDROOM,
    BATH,
    KITCHEN,
    LIVING,
    STAIR,
    BASEMENT,
    OTHER
}
