package weatherlap.sim.house;

/** How the old unit laps the barrier at one joint, where someone has looked. */
public enum Lap {
    SHINGLED,
    REVERSED,
    MISSING,
    UNKNOWN
}
