package weatherlap.analysis.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.regression.HuberFit.Residual;

class HuberFitTest {
    private static HuberFit fit(HuberFit.Problem problem, double[] start, Residual residual) {
        return HuberFit.of(problem, start, Optional.empty(), RateRegression.NoisePrior.NONE, 0, residual);
    }

    /**
     * Validation. Brownlee's stack loss (1965, Statistical Theory and Methodology in Science and Engineering; the rows from memory), the
     * worked example of Huber regression in Venables and Ripley's package MASS, ?rlm: coefficients as printed, residual standard error
     * 2.441.
     */
    @Test
    void stackLossComesOutAsPublished() {
        double[][] rows = {
            {42, 80, 27, 89}, {37, 80, 27, 88}, {37, 75, 25, 90}, {28, 62, 24, 87}, {18, 62, 22, 87}, {18, 62, 23, 87},
            {19, 62, 24, 93}, {20, 62, 24, 93}, {15, 58, 23, 87}, {14, 58, 18, 80}, {14, 58, 18, 89}, {13, 58, 17, 88},
            {11, 58, 18, 82}, {12, 58, 19, 93}, {8, 50, 18, 89}, {7, 50, 18, 86}, {8, 50, 19, 72}, {8, 50, 19, 79},
            {9, 50, 20, 80}, {15, 56, 20, 82}, {15, 70, 20, 91}
        };
        double[] loss = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            loss[i] = rows[i][0];
            rows[i][0] = 1;
        }
        List<Equation> equations = IntStream.range(0, rows.length)
                .mapToObj(i -> Equation.of(rows[i], loss[i]))
                .toList();
        HuberFit fit = fit(guess -> equations.stream(), new double[4], Residual.DIFFERENCE);
        double[] published = {-41.0265, 0.8294, 0.9261, -0.1278};
        double[] printed = {2e-3, 1e-4, 2e-4, 1e-4};
        for (int i = 0; i < published.length; i++) {
            assertThat(fit.coefficients().getEntry(i)).isCloseTo(published[i], within(printed[i]));
        }
        assertThat(fit.spread()).isCloseTo(2.441, within(2e-3));
    }

    /** One rate: nine observations about 1 and one far off. It pulls as hard at a thousand times as at ten times, up and down alike. */
    @Test
    void onTheLogScaleNoObservationPullsBeyondTheBound() {
        double ten = rate(10);
        assertThat(rate(1000)).isCloseTo(ten, within(1e-4));
        assertThat(ten).isBetween(1.0, 1.1);
        assertThat(rate(0.1)).isCloseTo(1 / ten, within(1e-4));
        assertThat(rate(0.001)).isCloseTo(1 / ten, within(1e-4));
    }

    private static double rate(double last) {
        double[] seen = {0.8, 0.9, 1, 1, 1, 1 / 0.9, 1 / 0.8, 0.95, 1 / 0.95, last};
        HuberFit.Problem ratios =
                guess -> Arrays.stream(seen).mapToObj(y -> Equation.of(new double[] {1 / guess[0]}, y / guess[0]));
        return fit(ratios, new double[] {1}, Residual.LOG).coefficients().getEntry(0);
    }
}
