package weatherlap.reports.handout;

import weatherlap.sim.run.MethodResult;

/** How the chance of leak damage of one method stands to that of another, in words that judgement can bear. */
enum LeakRank {
    LESS("less"),
    SAME("about the same"),
    MORE("more");

    /** A chance a fifth below the other is less, where it is at least half a point below (judgement). */
    private static final double CLEARLY = 0.8;

    private static final double LEAST = 0.005;

    private final String word;

    LeakRank(String word) {
        this.word = word;
    }

    static LeakRank of(MethodResult own, MethodResult other) {
        return of(own.leakProbability(), other.leakProbability());
    }

    /** Of two chances, 0 to 1. */
    static LeakRank of(double own, double other) {
        return below(own, other) ? LESS : below(other, own) ? MORE : SAME;
    }

    private static boolean below(double one, double other) {
        return one < CLEARLY * other && other - one > LEAST;
    }

    /** Before the name of what it is set against. */
    String likely() {
        return switch (this) {
            case LESS -> "less likely than with ";
            case SAME -> "about as likely as with ";
            case MORE -> "more likely than with ";
        };
    }

    String word() {
        return word;
    }
}
