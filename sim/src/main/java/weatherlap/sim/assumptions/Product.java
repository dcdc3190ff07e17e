package weatherlap.sim.assumptions;

import weatherlap.sim.method.Method;

/** A unit whose sightlines are known: the one that stands, or one of those that replace it. */
public enum Product {
    EXISTING,
    FULL_FLANGE,
    FULL_FRAME,
    INSERT;

    public static Product of(Method method) {
        return switch (method) {
            case FULL_FLANGE -> FULL_FLANGE;
            case FULL_FRAME -> FULL_FRAME;
            case INSERT -> INSERT;
        };
    }
}
