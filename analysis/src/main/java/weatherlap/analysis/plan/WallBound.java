package weatherlap.analysis.plan;

import java.util.ArrayList;
import java.util.List;
import weatherlap.sim.run.PlanParts.Way;

/** The bound of {@link LimitedSearch} for the options of one wall. */
final class WallBound {
    /** Looser than what is asked of a whole house, so that no sum need be exact. */
    private static final double SLACK = 1e-9;

    private final double[] inverse;
    private final double[] weights;
    private final int walls;
    private final double leastSum;
    /** By opening and draw, of the option asked for last: chance that all before stay dry. The next often begins as it does. */
    private final List<double[]> before = new ArrayList<>();

    private List<Way> last = List.of();

    /**
     * @param reference N⁰ of the wall, by draw, above 0
     * @param weights T / Σ T, by draw
     * @param walls W
     * @param leastDry mean chance of the wall that the house needs
     */
    WallBound(double[] reference, double[] weights, int walls, double leastDry) {
        before.add(PlanCost.ones(reference.length));
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
        List<Way> ways = option.ways();
        int end = ways.size() - 1;
        int o = 0;
        while (o < Math.min(end, last.size())
                && last.get(o).dry() == ways.get(o).dry()) {
            o++;
        }
        for (; o < end; o++) {
            if (before.size() == o + 1) {
                before.add(new double[weights.length]);
            }
            PlanCost.product(before.get(o), ways.get(o).dry(), before.get(o + 1));
        }
        last = ways;
        return log(before.get(end), ways.get(end).dry());
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
