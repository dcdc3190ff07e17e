package weatherlap.analysis.plan;

/** An option of {@link LimitedSearch}; what it takes to hold it against others is worked out once, where it is asked for. */
final class BoundedOption {
    private final WallOption option;
    private final double[] reference;
    private final double[] weights;
    private final int walls;
    private final double leastDry;
    private double[] dry;
    private double mean = Double.NaN;
    private double log = Double.NaN;

    /**
     * @param reference N⁰ of its wall, by draw
     * @param weights T, by draw
     * @param walls W
     * @param leastDry mean chance of the wall that the house needs
     */
    BoundedOption(WallOption option, double[] reference, double[] weights, int walls, double leastDry) {
        this.option = option;
        this.reference = reference;
        this.weights = weights;
        this.walls = walls;
        this.leastDry = leastDry;
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

    /**
     * By draw: chance that all openings of the wall stay dry. Kept where the wall is dry enough; a wall of twelve windows has half a million
     * ways, most of them too wet.
     */
    double[] dry() {
        return isDryEnough() ? dry : option.dry();
    }

    /** Whether the house can keep the limit with it, were all other walls dry. */
    boolean isDryEnough() {
        if (Double.isNaN(mean)) {
            double[] own = option.dry();
            mean = PlanSearch.mean(own);
            dry = mean >= leastDry ? own : null;
        }
        return mean >= leastDry;
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
