package weatherlap.sim.method;

/** Which methods a row applies to. */
public enum MethodScope {
    FULL_FLANGE,
    INSERT,
    BOTH;

    public boolean covers(Method method) {
        return this == BOTH || name().equals(method.name());
    }
}
