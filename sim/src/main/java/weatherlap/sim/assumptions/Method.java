package weatherlap.sim.assumptions;

/** The two ways to replace a window. */
public enum Method {
    FULL_FLANGE,
    INSERT;

    public Method other() {
        return this == FULL_FLANGE ? INSERT : FULL_FLANGE;
    }
}
