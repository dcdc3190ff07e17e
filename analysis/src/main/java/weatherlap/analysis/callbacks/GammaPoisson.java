package weatherlap.analysis.callbacks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.special.Gamma;
import weatherlap.sim.Check;

/**
 * Rates of several groups that are like each other: θ_i ~ Gamma(a, b), n_i ~ Poisson(θ_i E_i), where a and b, and with them the
 * exposures E, are one of finitely many points, each with a prior weight w. Given the point, θ_i ~ Gamma(a + n_i, b + E_i), and the point
 * weighs
 *
 * <pre>  w ∏_i  Γ(a + n_i)/Γ(a) · b^a / (b + E_i)^(a + n_i)  · (what else the records say of the point)</pre>
 *
 * <p>Exact but for the grid on which the points lie.
 *
 * @see "Gaver, O'Muircheartaigh 1987, Technometrics 29(1) (robust empirical Bayes analyses of event rates: the pumps of the test)"
 */
public final class GammaPoisson {
    private static final int HALVINGS = 60;

    private final List<Point> points;
    private final int[] counts;
    private final double[] weights;

    /**
     * A state of what all groups share.
     *
     * @param shape a, above 0
     * @param rate b, above 0
     * @param logWeight of the prior and of what else the records say of the point, up to a constant
     * @param exposures E_i, 0 or more, one a group
     */
    public record Point(double shape, double rate, double logWeight, List<Double> exposures) {
        public Point {
            Check.positive("shape", shape);
            Check.positive("rate", rate);
            exposures = List.copyOf(exposures);
        }
    }

    private GammaPoisson(List<Point> points, int[] counts, double[] weights) {
        this.points = points;
        this.counts = counts;
        this.weights = weights;
    }

    /** The posterior, given the events of each group. */
    public static GammaPoisson of(List<Point> points, List<Integer> counts) {
        int[] events = counts.stream().mapToInt(n -> n).toArray();
        double[] logs = points.stream().mapToDouble(point -> log(point, events)).toArray();
        double largest = Arrays.stream(logs).max().orElseThrow();
        double[] weights =
                Arrays.stream(logs).map(log -> Math.exp(log - largest)).toArray();
        double sum = Arrays.stream(weights).sum();
        return new GammaPoisson(
                List.copyOf(points),
                events,
                Arrays.stream(weights).map(w -> w / sum).toArray());
    }

    private static double log(Point point, int[] counts) {
        double log = point.logWeight();
        for (int i = 0; i < counts.length; i++) {
            log += Gamma.logGamma(point.shape() + counts[i])
                    - Gamma.logGamma(point.shape())
                    + point.shape() * Math.log(point.rate())
                    - (point.shape() + counts[i])
                            * Math.log(point.rate() + point.exposures().get(i));
        }
        return log;
    }

    /** Posterior weight of each point, in their order; they sum to 1. */
    public List<Double> weights() {
        return Arrays.stream(weights).boxed().toList();
    }

    /** Posterior mean of the rate of a group. */
    public double mean(int group) {
        return IntStream.range(0, points.size())
                .mapToDouble(p -> weights[p] * shape(p, group) / rate(p, group))
                .sum();
    }

    /** Posterior probability that the rate of a group is at most so much. */
    public double probabilityBelow(int group, double value) {
        return IntStream.range(0, points.size())
                .filter(p -> weights[p] > 0)
                .mapToDouble(p -> weights[p] * Gamma.regularizedGammaP(shape(p, group), value * rate(p, group)))
                .sum();
    }

    /** Posterior density of the rate of a group at a value above 0. */
    public double density(int group, double value) {
        return IntStream.range(0, points.size())
                .filter(p -> weights[p] > 0)
                .mapToDouble(p -> weights[p]
                        * Math.exp(shape(p, group) * Math.log(rate(p, group))
                                + (shape(p, group) - 1) * Math.log(value)
                                - rate(p, group) * value
                                - Gamma.logGamma(shape(p, group))))
                .sum();
    }

    /** The value that the rate of a group stays below with a probability, found by halving; good to nine digits. */
    public double quantile(int group, double probability) {
        double high = Math.max(mean(group), Double.MIN_NORMAL);
        while (probabilityBelow(group, high) < probability) {
            high *= 2;
        }
        double low = 0;
        for (int i = 0; i < HALVINGS && high - low > 1e-9 * high; i++) {
            double middle = (low + high) / 2;
            if (probabilityBelow(group, middle) < probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** Posterior means of the rates, one a group. */
    public List<Double> means() {
        List<Double> means = new ArrayList<>();
        for (int i = 0; i < counts.length; i++) {
            means.add(mean(i));
        }
        return means;
    }

    private double shape(int point, int group) {
        return points.get(point).shape() + counts[group];
    }

    private double rate(int point, int group) {
        return points.get(point).rate() + points.get(point).exposures().get(group);
    }
}
