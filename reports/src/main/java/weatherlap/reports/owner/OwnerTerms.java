package weatherlap.reports.owner;

import weatherlap.analysis.plan.Limit;
import weatherlap.sim.method.Method;

/** Limits and methods as an owner says them. */
public final class OwnerTerms {
    private OwnerTerms() {}

    /** After the name of a method and a colon. */
    public static String of(Limit limit) {
        return switch (limit) {
            case BEHIND_MASONRY -> "brick or stucco in the way";
            case NO_UNIT_FITS -> "no unit fits";
            case ROTTEN_FRAME -> "rotten frames";
            case ESCAPE_LOST -> "a way out would get too small";
            case RISK_LIMIT -> "more leak risk than a family should take";
        };
    }

    /** What is done, in a few words. */
    static String of(Method method) {
        return switch (method) {
            case FULL_FLANGE -> "old unit out whole, the new one lapped into the barrier";
            case FULL_FRAME -> "old unit out whole, the wall left alone";
            case INSERT -> "a smaller unit in the old frame";
        };
    }
}
