package weatherlap.analysis.sensitivity;

import org.apache.commons.math3.stat.StatUtils;

/**
 * Ratio of two means over replicates, with the standard error of its linearisation: of the residuals (n_r − value d_r) / mean(d).
 *
 * @see "Cochran 1977, Sampling Techniques, 3rd ed., section 2.11"
 */
record Ratio(double value, double error) {
    static Ratio of(double[] numerators, double[] denominators) {
        double denominator = StatUtils.mean(denominators);
        if (denominator == 0) {
            return new Ratio(0, 0);
        }
        double value = StatUtils.mean(numerators) / denominator;
        double squares = 0;
        for (int r = 0; r < numerators.length; r++) {
            double residual = (numerators[r] - value * denominators[r]) / denominator;
            squares += residual * residual;
        }
        return new Ratio(value, Math.sqrt(squares / (numerators.length - 1) / numerators.length));
    }
}
