package weatherlap.analysis.sensitivity;

import java.util.List;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Mean half squares of differences over one shift of the sequence: by outcome, then by group.
 *
 * @param all between A and B: in the mean the variance
 * @param shared between A and B less that between B and A_u: in the mean the variance that u has by itself
 * @param moved between A and A_u: in the mean the variance that u has with all others
 */
@SuppressWarnings("ArrayRecordComponent") // private to the estimator
record Replicate(double[] mean, double[] all, double[][] shared, double[][] moved) {

    static Replicate of(
            CubeModel model, int factors, List<FactorGroup> groups, SobolIndices.Design design, int number) {
        double[][] both = ShiftedSobol.points(
                design.points(), 2 * factors, design.streams().world("Sobol' shift " + number));
        double[][] points = new double[design.points() * (groups.size() + 2)][];
        int next = 0;
        for (double[] pair : both) {
            points[next++] = half(pair, 0, factors);
            points[next++] = half(pair, factors, factors);
            for (FactorGroup group : groups) {
                points[next++] = mixed(pair, factors, group);
            }
        }
        return of(model.outcomes(points), design.points(), groups.size());
    }

    private static Replicate of(double[][] outcomes, int points, int groups) {
        Replicate moments = new Replicate(
                new double[outcomes.length],
                new double[outcomes.length],
                new double[outcomes.length][groups],
                new double[outcomes.length][groups]);
        for (int o = 0; o < outcomes.length; o++) {
            moments.mean[o] = StatUtils.mean(outcomes[o]);
            for (int i = 0; i < points; i++) {
                moments.add(o, outcomes[o], i * (groups + 2), 1.0 / points);
            }
        }
        return moments;
    }

    private void add(int o, double[] outcome, int first, double weight) {
        double a = outcome[first];
        double b = outcome[first + 1];
        double apart = weight * halfSquare(a - b);
        all[o] += apart;
        for (int g = 0; g < shared[o].length; g++) {
            double mixed = outcome[first + 2 + g];
            shared[o][g] += apart - weight * halfSquare(b - mixed);
            moved[o][g] += weight * halfSquare(a - mixed);
        }
    }

    private static double halfSquare(double difference) {
        return difference * difference / 2;
    }

    private static double[] half(double[] pair, int from, int count) {
        double[] half = new double[count];
        System.arraycopy(pair, from, half, 0, count);
        return half;
    }

    private static double[] mixed(double[] pair, int factors, FactorGroup group) {
        double[] point = half(pair, 0, factors);
        for (int factor : group.factors()) {
            point[factor] = pair[factors + factor];
        }
        return point;
    }
}
