package weatherlap.analysis.plan;

/** An option of {@link LimitedSearch}; what it takes to hold it against others is worked out once, where it is asked for. */
final class BoundedOption {
    private final WallOption option;
    private final double[] reference;
    private final double[] weights;
    private final int walls;
    private double[] dry;
    private double mean;
    private double log = Double.NaN;

    /**
     * @param reference N⁰ of its wall, by draw
     * @param weights T, by draw
     * @param walls W
     */
    BoundedOption(WallOption option, double[] reference, double[] weights, int walls) {
        this.option = option;
        this.reference = reference;
        this.weights = weights;
        this.walls = walls;
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
            mean = PlanSearch.mean(dry);
        }
        return dry;
    }

    double mean() {
        dry();
        return mean;
    }

    /** Its part of the bound, g. */
    double log() {
        if (Double.isNaN(log)) {
            double[] own = dry();
            double sum = 0;
            double all = 0;
            for (int d = 0; d < own.length; d++) {
                sum += weights[d] * Math.pow(own[d] / reference[d], walls);
                all += weights[d];
            }
            log = Math.log(sum / all) / walls;
        }
        return log;
    }
}
