package weatherlap.sim.house;

/** What a frame is made of. */
public enum FrameMaterial {
    ALUMINUM,
    VINYL,
    WOOD,
    STEEL
}
