package weatherlap.reports.offer;

/** Where the leaks of a choice stand among all that a house could be done by, in words that judgement can bear. */
public enum LeakRank {
    LOWEST(0.05),
    LOW(1 / 3.0),
    MIDDLE(2 / 3.0),
    HIGH(0.95),
    HIGHEST(Double.POSITIVE_INFINITY),
    /** All choices are about alike. */
    SAME(Double.NaN);

    private final double upTo;

    LeakRank(double upTo) {
        this.upTo = upTo;
    }

    /** @param place 0 at the least, 1 at the most */
    static LeakRank at(double place) {
        for (LeakRank rank : values()) {
            if (place <= rank.upTo) {
                return rank;
            }
        }
        return HIGHEST;
    }

    /** The largest place of this rank, 0 to 1, for a page that ranks by itself. */
    double upTo() {
        return upTo;
    }
}
