package weatherlap.analysis.plan;

/** The bound of {@link LimitedSearch} for the options of one wall. */
final class WallBound {
    /** Looser than what is asked of a whole house, so that no sum need be exact. */
    private static final double SLACK = 1e-9;

    private final double[] inverse;
    private final double[] weights;
    private final int walls;
    private final double leastSum;
    /** Of the option asked for last, those before its last opening, which the next often begins with too. */
    private FirstOpenings before;

    private double[] dryBefore;

    /**
     * @param reference N⁰ of the wall, by draw, above 0
     * @param weights T / Σ T, by draw
     * @param walls W
     * @param leastDry mean chance of the wall that the house needs
     */
    WallBound(double[] reference, double[] weights, int walls, double leastDry) {
        inverse = new double[reference.length];
        for (int d = 0; d < inverse.length; d++) {
            inverse[d] = 1 / reference[d];
        }
        this.weights = weights;
        this.walls = walls;
        leastSum = (leastDry - SLACK) * reference.length;
    }

    /** g of an option; −∞ where the house would be too wet with it, were all other walls dry. */
    double log(WallOption option) {
        if (before != option.before()) {
            before = option.before();
            dryBefore = option.dryBefore();
        }
        return log(dryBefore, option.last().dry());
    }

    /** The same, from the chances, by draw, that its openings before the last stay dry, and that the last does. */
    double log(double[] first, double[] last) {
        double sum = 0;
        double weighted = 0;
        double more = 0;
        double moreWeighted = 0;
        int d = 0;
        for (; d < last.length - 1; d += 2) {
            double one = first[d] * last[d];
            double next = first[d + 1] * last[d + 1];
            sum += one;
            more += next;
            weighted += weights[d] * power(one * inverse[d]);
            moreWeighted += weights[d + 1] * power(next * inverse[d + 1]);
        }
        for (; d < last.length; d++) {
            double one = first[d] * last[d];
            sum += one;
            weighted += weights[d] * power(one * inverse[d]);
        }
        return sum + more < leastSum ? Double.NEGATIVE_INFINITY : Math.log(weighted + moreWeighted) / walls;
    }

    private double power(double ratio) {
        double power = ratio;
        for (int w = 1; w < walls; w++) {
            power *= ratio;
        }
        return power;
    }
}
