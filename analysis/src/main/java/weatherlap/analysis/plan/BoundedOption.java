package weatherlap.analysis.plan;

/** An option of {@link LimitedSearch}. It keeps no draws until it is asked for them: a wall of twelve windows has half a million ways. */
final class BoundedOption {
    private final WallOption option;
    private final double log;
    private double[] dry;

    /** @param log its part of the bound, g */
    BoundedOption(WallOption option, double log) {
        this.option = option;
        this.log = log;
    }

    WallOption option() {
        return option;
    }

    double usd() {
        return option.usd();
    }

    double log() {
        return log;
    }

    /** By draw: chance that all openings of the wall stay dry. */
    double[] dry() {
        if (dry == null) {
            dry = option.dry();
        }
        return dry;
    }
}
