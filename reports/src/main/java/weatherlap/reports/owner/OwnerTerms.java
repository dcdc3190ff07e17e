package weatherlap.reports.owner;

import weatherlap.analysis.plan.Limit;

/** Limits as an owner says them, after the name of a method and a colon. */
public final class OwnerTerms {
    private OwnerTerms() {}

    public static String of(Limit limit) {
        return switch (limit) {
            case BEHIND_MASONRY -> "brick or stucco in the way";
            case NO_UNIT_FITS -> "no unit fits";
            case ROTTEN_FRAME -> "rotten frames";
            case ESCAPE_LOST -> "a way out would get too small";
            case RISK_LIMIT -> "more leak risk than a family should take";
        };
    }
}
