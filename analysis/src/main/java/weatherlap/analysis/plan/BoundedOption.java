package weatherlap.analysis.plan;

/** An option of {@link LimitedSearch}; what it takes to hold it against others is worked out once, where it is asked for. */
final class BoundedOption {
    private final WallOption option;
    private final double[] reference;
    private final double[] weights;
    private final int walls;
    private final double leastDry;
    private double[] dry;
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

    /** By draw: chance that all openings of the wall stay dry. */
    double[] dry() {
        if (dry == null) {
            dry = option.dry();
        }
        return dry;
    }

    /** Whether the house can keep the limit with it, were all other walls dry. Keeps no draws: a wall of twelve windows has half a million ways. */
    boolean isDryEnough() {
        if (Double.isNaN(log)) {
            double[] own = option.dry();
            log = PlanSearch.mean(own) < leastDry ? Double.NEGATIVE_INFINITY : log(own);
        }
        return log > Double.NEGATIVE_INFINITY;
    }

    /** Its part of the bound, g, where it is dry enough. */
    double log() {
        return isDryEnough() ? log : Double.NEGATIVE_INFINITY;
    }

    private double log(double[] own) {
        double sum = 0;
        double all = 0;
        for (int d = 0; d < own.length; d++) {
            sum += weights[d] * power(own[d] / reference[d]);
            all += weights[d];
        }
        return Math.log(sum / all) / walls;
    }

    private double power(double ratio) {
        double power = 1;
        for (int w = 0; w < walls; w++) {
            power *= ratio;
        }
        return power;
    }
}
