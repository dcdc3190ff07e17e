package weatherlap.analysis.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** The closed form against second differences of the score that it is made from. */
class BendTest {
    private static final double STEP = 1e-4;
    private static final double PRECISION = 7;
    private static final double[] ROOT = {2, 0.5, 0.1};
    private static final RealMatrix COVARIANCE = MatrixUtils.createRealMatrix(
            new double[][] {{0.09, 0.01, -0.02}, {0.01, 0.02, 0.004}, {-0.02, 0.004, 0.03}});

    /** The score of what is observed where the root foresees it, at other unknowns. */
    @FunctionalInterface
    private interface Score {
        double[] at(double[] unknowns);
    }

    /** A job of 3 β₁ + 4 β₂ minutes at pace e^(a/2). */
    private static double[] ofTotal(double[] u) {
        double taken = (3 * ROOT[0] + 4 * ROOT[1]) * Math.exp(ROOT[2] / 2);
        double minutes = 3 * u[0] + 4 * u[1];
        double residual = PRECISION * (taken / (minutes * Math.exp(u[2] / 2)) - 1);
        return new double[] {3 / minutes * residual, 4 / minutes * residual, residual / 2};
    }

    /** Both steps timed at pace e^(a/2), with shared errors. */
    private static double[] ofTimings(double[] u, double shared) {
        double pace = Math.exp((ROOT[2] - u[2]) / 2);
        double first = ROOT[0] * pace / u[0] - 1;
        double second = ROOT[1] * pace / u[1] - 1;
        double both = shared * (first + second);
        double one = PRECISION * (first - both);
        double two = PRECISION * (second - both);
        return new double[] {one / u[0], two / u[1], (one + two) / 2};
    }

    private static double[] shift(Score score) {
        double[] half = new double[3];
        for (int m = 0; m < 3; m++) {
            for (int n = 0; n < 3; n++) {
                for (int l = 0; l < 3; l++) {
                    half[m] += COVARIANCE.getEntry(n, l) * second(score, m, n, l) / 2;
                }
            }
        }
        return COVARIANCE.operate(half);
    }

    private static double second(Score score, int m, int n, int l) {
        double sum = 0;
        for (int first = -1; first <= 1; first += 2) {
            for (int other = -1; other <= 1; other += 2) {
                double[] at = ROOT.clone();
                at[n] += first * STEP;
                at[l] += other * STEP;
                sum += first * other * score.at(at)[m];
            }
        }
        return sum / (4 * STEP * STEP);
    }

    @Test
    void totalsAndTimingsBendAsTheirScoreDoes() {
        Bend total = new Bend(COVARIANCE);
        double minutes = 3 * ROOT[0] + 4 * ROOT[1];
        total.add(new int[] {0, 1, 2}, new double[] {3 / minutes, 4 / minutes, 0.5}, 2, PRECISION);
        assertThat(total.shift()).containsExactly(shift(BendTest::ofTotal), within(1e-6));
        Bend timed = new Bend(COVARIANCE);
        timed.addTimed(new int[] {0, 1, 2}, new double[] {1 / ROOT[0], 1 / ROOT[1], 0.5}, 2, PRECISION, 0.3);
        assertThat(timed.shift()).containsExactly(shift(u -> ofTimings(u, 0.3)), within(1e-6));
    }

    /** By hand: one rate known to the share v of itself, of which its jobs are w: its mean lies 2 w v above its peak. */
    @Test
    void oneRateIsRaisedByTwiceItsSquaredError() {
        double rate = 10;
        Bend bend = new Bend(MatrixUtils.createRealMatrix(new double[][] {{0.04 * rate * rate}}));
        bend.add(new int[] {0}, new double[] {1 / rate}, 1, 20);
        assertThat(bend.shift()[0] / rate).isCloseTo(2 * 20 * 0.04 * 0.04, within(1e-12));
    }
}
