package weatherlap.sim.house;

/** What covers the wall outside. */
public enum Cladding {
    VINYL_SIDING,
    ALUMINUM_SIDING,
    WOOD_LAP,
    FIBER_CEMENT,
    BRICK_VENEER,
    STUCCO;

    /** Hung in interlocking panels that unlock and go back. */
    public boolean hungInPanels() {
        return this == VINYL_SIDING || this == ALUMINUM_SIDING;
    }

    /** Laid in horizontal courses that can be taken down around an opening. */
    public boolean inCourses() {
        return hungInPanels() || this == WOOD_LAP || this == FIBER_CEMENT;
    }
}
