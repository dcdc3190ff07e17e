package weatherlap.sim.house;

/** Whether a thing was seen. */
public enum Sighting {
    YES,
    NO,
    UNKNOWN
}
