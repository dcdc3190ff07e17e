package weatherlap.sim.house;

/** State of the frame that an insert would keep. */
public enum FrameCondition {
    SOUND,
    WORN,
    ROTTEN,
    UNKNOWN
}
