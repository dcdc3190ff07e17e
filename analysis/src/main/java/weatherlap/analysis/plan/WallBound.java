package weatherlap.analysis.plan;

/** The bound of {@link LimitedSearch} for the options of one wall. */
final class WallBound {
    /** Looser than what is asked of a whole house, so that no sum need be exact. */
    private static final double SLACK = 1e-9;

    private final double[] inverse;
    private final double[] weights;
    private final int walls;
    private final double leastSum;

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
    double log(double[] dry) {
        return PlanCost.sum(dry) < leastSum ? Double.NEGATIVE_INFINITY : Math.log(weighted(dry)) / walls;
    }

    private double weighted(double[] dry) {
        double a = 0;
        double b = 0;
        int d = 0;
        for (; d < dry.length - 1; d += 2) {
            a += weights[d] * power(dry[d] * inverse[d]);
            b += weights[d + 1] * power(dry[d + 1] * inverse[d + 1]);
        }
        for (; d < dry.length; d++) {
            a += weights[d] * power(dry[d] * inverse[d]);
        }
        return a + b;
    }

    private double power(double ratio) {
        double power = ratio;
        for (int w = 1; w < walls; w++) {
            power *= ratio;
        }
        return power;
    }
}
