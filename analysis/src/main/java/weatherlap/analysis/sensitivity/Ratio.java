package weatherlap.analysis.sensitivity;

import java.util.stream.DoubleStream;

/**
 * Ratio of two sums over replicates, with its standard error by the jackknife: the spread of the ratios without one replicate each. In a
 * heavy tail it tells more than that of the linearised ratio does.
 *
 * @see "Efron and Stein 1981, Annals of Statistics 9(3), 586-596"
 */
record Ratio(double value, double error) {
    static Ratio of(double[] numerators, double[] denominators) {
        double above = DoubleStream.of(numerators).sum();
        double below = DoubleStream.of(denominators).sum();
        if (below == 0) {
            return new Ratio(0, 0);
        }
        int n = numerators.length;
        double[] without = new double[n];
        double mean = 0;
        for (int r = 0; r < n; r++) {
            double rest = below - denominators[r];
            without[r] = rest > 0 ? (above - numerators[r]) / rest : 0;
            mean += without[r] / n;
        }
        double squares = 0;
        for (double ratio : without) {
            squares += (ratio - mean) * (ratio - mean);
        }
        return new Ratio(above / below, Math.sqrt(squares * (n - 1) / n));
    }
}
