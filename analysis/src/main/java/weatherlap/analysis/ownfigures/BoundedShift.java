package weatherlap.analysis.ownfigures;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import weatherlap.sim.assumptions.ThreePoint;

/**
 * The least change of uncertain values that meets some weighted sums: least Σ (m − μ)²/σ², each m within its range. Its solution is
 *
 * <pre>m_s = μ_s + σ²_s Σ_k λ_k w_ks, held within low to high</pre>
 *
 * <p>with a λ for each sum, found one after the other by bisection until all sums are met (coordinate ascent on the dual, which is concave).
 */
final class BoundedShift {
    private static final int ROUNDS = 500;
    private static final int HALVINGS = 200;
    /** A sum is met when it is off by less than this share. */
    private static final double MET = 1e-9;

    private final List<ThreePoint> points;
    private final double[][] weights;
    private final double[] lambda;

    private BoundedShift(List<ThreePoint> points, double[][] weights) {
        this.points = points;
        this.weights = weights;
        lambda = new double[weights.length];
    }

    /** @return the values; empty where none within the ranges meet the sums */
    static Optional<double[]> of(List<ThreePoint> points, double[][] weights, double[] target) {
        BoundedShift shift = new BoundedShift(points, weights);
        for (int round = 0; round < ROUNDS; round++) {
            for (int k = 0; k < target.length; k++) {
                if (!shift.meet(k, target[k])) {
                    return Optional.empty();
                }
            }
            if (shift.meets(target)) {
                return Optional.of(shift.values());
            }
        }
        return Optional.empty();
    }

    private boolean meet(int k, double target) {
        double step = 1;
        double low = lambda[k];
        double high = lambda[k];
        for (int i = 0; i < HALVINGS && sum(k, low) > target; i++, step *= 2) {
            low -= step;
        }
        step = 1;
        for (int i = 0; i < HALVINGS && sum(k, high) < target; i++, step *= 2) {
            high += step;
        }
        for (int i = 0; i < HALVINGS && low < high; i++) {
            double middle = (low + high) / 2;
            if (sum(k, middle) < target) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.abs(sum(k, high) - target) <= MET * Math.abs(target);
    }

    private double sum(int k, double value) {
        lambda[k] = value;
        double[] values = values();
        double sum = 0;
        for (int s = 0; s < values.length; s++) {
            sum += weights[k][s] * values[s];
        }
        return sum;
    }

    private boolean meets(double[] target) {
        for (int k = 0; k < target.length; k++) {
            if (Math.abs(sum(k, lambda[k]) - target[k]) > MET * Math.abs(target[k])) {
                return false;
            }
        }
        return true;
    }

    private double[] values() {
        double[] values = new double[points.size()];
        Arrays.setAll(values, s -> {
            ThreePoint point = points.get(s);
            double pull = 0;
            for (int k = 0; k < lambda.length; k++) {
                pull += lambda[k] * weights[k][s];
            }
            return Math.max(point.low(), Math.min(point.high(), point.mean() + point.variance() * pull));
        });
        return values;
    }
}
