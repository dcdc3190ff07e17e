package weatherlap.analysis.sensitivity;

import java.util.List;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Moments of one shift of the sequence: by outcome, then by group.
 *
 * @param shared numerator of the first-order index
 * @param pairVariance its denominator
 * @param halfSquare numerator of the total index
 */
@SuppressWarnings("ArrayRecordComponent") // private to the estimator
record Replicate(double[] mean, double[] variance, double[][] shared, double[][] pairVariance, double[][] halfSquare) {

    static Replicate of(
            CubeModel model, int factors, List<FactorGroup> groups, SobolIndices.Design design, int number) {
        double[][] both = ShiftedSobol.points(
                design.points(), 2 * factors, design.streams().world("Sobol' shift " + number));
        double[][] a = columns(both, 0, factors);
        double[][] b = columns(both, factors, factors);
        double[][] yA = model.outcomes(a);
        double[][] yB = model.outcomes(b);
        int outcomes = yA.length;
        Replicate moments = new Replicate(
                new double[outcomes],
                new double[outcomes],
                new double[outcomes][groups.size()],
                new double[outcomes][groups.size()],
                new double[outcomes][groups.size()]);
        for (int o = 0; o < outcomes; o++) {
            moments.mean[o] = (StatUtils.mean(yA[o]) + StatUtils.mean(yB[o])) / 2;
            moments.variance[o] = meanOf(yA[o], yB[o], moments.mean[o], (p, q) -> (p * p + q * q) / 2);
        }
        for (int g = 0; g < groups.size(); g++) {
            double[][] yMixed = model.outcomes(mixed(a, b, groups.get(g)));
            for (int o = 0; o < outcomes; o++) {
                moments.take(o, g, yA[o], yB[o], yMixed[o]);
            }
        }
        return moments;
    }

    private void take(int o, int g, double[] yA, double[] yB, double[] yMixed) {
        double m = (StatUtils.mean(yB) + StatUtils.mean(yMixed)) / 2;
        shared[o][g] = meanOf(yB, yMixed, m, (p, q) -> p * q);
        pairVariance[o][g] = meanOf(yB, yMixed, m, (p, q) -> (p * p + q * q) / 2);
        halfSquare[o][g] = meanOf(yA, yMixed, m, (p, q) -> (p - q) * (p - q) / 2);
    }

    /** Mean of a product of values taken from a centre, which loses no digits to a large mean. */
    private static double meanOf(double[] first, double[] second, double centre, Product product) {
        double sum = 0;
        for (int i = 0; i < first.length; i++) {
            sum += product.of(first[i] - centre, second[i] - centre);
        }
        return sum / first.length;
    }

    private interface Product {
        double of(double p, double q);
    }

    private static double[][] columns(double[][] points, int from, int count) {
        double[][] part = new double[points.length][count];
        for (int i = 0; i < points.length; i++) {
            System.arraycopy(points[i], from, part[i], 0, count);
        }
        return part;
    }

    private static double[][] mixed(double[][] a, double[][] b, FactorGroup group) {
        double[][] points = new double[a.length][];
        for (int i = 0; i < a.length; i++) {
            points[i] = a[i].clone();
            for (int factor : group.factors()) {
                points[i][factor] = b[i][factor];
            }
        }
        return points;
    }
}
