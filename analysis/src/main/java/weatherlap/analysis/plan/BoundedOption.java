package weatherlap.analysis.plan;

/** An option of {@link LimitedSearch}; what it takes to hold it against others is worked out once, where it is asked for. */
final class BoundedOption {
    private final WallOption option;
    private final WallBound bound;
    private double[] dry;
    private double log = Double.NaN;

    BoundedOption(WallOption option, WallBound bound) {
        this.option = option;
        this.bound = bound;
    }

    WallOption option() {
        return option;
    }

    boolean within(int set) {
        return option.within(set);
    }

    double usd() {
        return option.usd();
    }

    /** By draw: chance that all openings of the wall stay dry. */
    double[] dry() {
        if (dry == null) {
            dry = option.dry();
        }
        return dry;
    }

    /** Its part of the bound, g; −∞ where it is too wet. Keeps no draws: a wall of twelve windows has half a million ways. */
    double log() {
        if (Double.isNaN(log)) {
            log = bound.log(option);
        }
        return log;
    }
}
