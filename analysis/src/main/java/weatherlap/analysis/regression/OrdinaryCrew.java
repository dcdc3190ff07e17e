package weatherlap.analysis.regression;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The crew that rates are given for: the mean of the crews' log paces, weighed by jobs and by Tukey's biweight, so that a crew far from
 * the others does not make them slow or fast. Of two crews it is the mean.
 *
 * @see "Mosteller, Tukey 1977, Data Analysis and Regression, ch. 10 (biweight, 4.685 spreads: 95 % efficient where paces are normal)"
 */
public final class OrdinaryCrew {
    private static final double BOUND = 4.685;
    /** Crews differ at least so much before one counts as far from the others, log (judgement). */
    private static final double LEAST_SPREAD = 0.04;

    private OrdinaryCrew() {}

    /**
     * Shares of the crews in the ordinary one; they add up to 1.
     *
     * @param paces logs
     * @param jobs of each crew
     */
    public static double[] shares(double[] paces, double[] jobs) {
        double middle = median(paces, jobs);
        double[] away = Arrays.stream(paces).map(p -> Math.abs(p - middle)).toArray();
        double spread = Math.max(LEAST_SPREAD, HuberFit.MAD_TO_SD * median(away, jobs));
        double[] shares = IntStream.range(0, paces.length)
                .mapToDouble(k -> {
                    double far = away[k] / (BOUND * spread);
                    return far < 1 ? jobs[k] * Math.pow(1 - far * far, 2) : 0;
                })
                .toArray();
        double sum = Arrays.stream(shares).sum();
        return Arrays.stream(shares).map(share -> share / sum).toArray();
    }

    /** Half of the weight is at or below it; between two values where it is split evenly. */
    private static double median(double[] values, double[] weights) {
        int[] order = IntStream.range(0, values.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> values[i]))
                .mapToInt(i -> i)
                .toArray();
        double half = Arrays.stream(weights).sum() / 2;
        double sum = 0;
        for (int i = 0; i < order.length; i++) {
            sum += weights[order[i]];
            // nearly even crews count as even: one job more must not make a crew the ordinary one
            if (i + 1 < order.length && Math.abs(sum - half) <= 0.1 * half) {
                return (values[order[i]] + values[order[i + 1]]) / 2;
            }
            if (sum >= half) {
                return values[order[i]];
            }
        }
        return values[order[order.length - 1]];
    }
}
