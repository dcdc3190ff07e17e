package weatherlap.analysis.sensitivity;

import org.apache.commons.math3.stat.StatUtils;
import weatherlap.sim.Check;

/**
 * What it is worth to know one value before choosing between two actions: the expected value of partial perfect information.
 *
 * <p>With D the cost of the first action less that of the second and x the value, in draws of both:
 *
 * <pre>
 *   EVPPI = min(E D, 0) − E min(E(D | x), 0)
 * </pre>
 *
 * E(D | x) is taken from the regression of D on a polynomial of degree 4 in x, which suits responses that are smooth in x. The
 * estimate is never negative, and too high by about 5 Var(D)/n at the worst, where the choice hangs in the balance. The error takes the
 * regions where each action wins as given.
 *
 * @see "Strong, Oakley, Brennan 2014, Medical Decision Making 34(3), 311-326 (regression on draws)"
 */
public final class PartialInformation {
    private static final int DEGREE = 4;

    /** Orthonormal over the draws; a column that the others span is zero. */
    private final double[][] basis;

    private PartialInformation(double[][] basis) {
        this.basis = basis;
    }

    /** A worth in the unit of the costs, with one standard error. */
    public record Worth(double value, double error) {}

    /** On the draws of the value that would be known. */
    public static PartialInformation on(double[] known) {
        int n = known.length;
        Check.within("draws", n, DEGREE + 2, Integer.MAX_VALUE);
        double middle = StatUtils.mean(known);
        double reach = 0;
        for (double x : known) {
            reach = Math.max(reach, Math.abs(x - middle));
        }
        double[][] basis = new double[DEGREE + 1][n];
        for (int p = 0; p <= DEGREE; p++) {
            for (int i = 0; i < n; i++) {
                basis[p][i] = Math.pow(reach == 0 ? 0 : (known[i] - middle) / reach, p);
            }
            orthonormalise(basis, p);
        }
        return new PartialInformation(basis);
    }

    /** E(D | x) at each draw. */
    double[] expected(double[] difference) {
        double[] fitted = new double[difference.length];
        for (double[] column : basis) {
            double weight = dot(column, difference);
            for (int i = 0; i < fitted.length; i++) {
                fitted[i] += weight * column[i];
            }
        }
        return fitted;
    }

    /** Worth to one choice, such as a house. */
    public Worth worth(double[] difference) {
        return worth(new double[][] {difference});
    }

    /**
     * Worth to several choices that the value would inform at once, each made by itself.
     *
     * @param differences one row a choice, one column a draw
     */
    public Worth worth(double[][] differences) {
        int n = basis[0].length;
        double value = 0;
        double[] gains = new double[n];
        for (double[] difference : differences) {
            double mean = StatUtils.mean(difference);
            double[] fitted = expected(difference);
            double informed = 0;
            for (int i = 0; i < n; i++) {
                informed += Math.min(fitted[i], 0);
                gains[i] += (mean < 0 ? difference[i] : 0) - (fitted[i] < 0 ? difference[i] : 0);
            }
            value += Math.max(0, Math.min(mean, 0) - informed / n);
        }
        double centre = StatUtils.mean(gains);
        double squares = 0;
        for (double gain : gains) {
            squares += (gain - centre) * (gain - centre);
        }
        return new Worth(value, Math.sqrt(squares / (n - 1) / n));
    }

    /** Takes the earlier columns out of column p, twice for the sake of rounding, and scales it to length 1. */
    private static void orthonormalise(double[][] basis, int p) {
        double before = Math.sqrt(dot(basis[p], basis[p]));
        for (int pass = 0; pass < 2; pass++) {
            for (int q = 0; q < p; q++) {
                double weight = dot(basis[q], basis[p]);
                for (int i = 0; i < basis[p].length; i++) {
                    basis[p][i] -= weight * basis[q][i];
                }
            }
        }
        double length = Math.sqrt(dot(basis[p], basis[p]));
        double scale = length > 1e-10 * before && length > 0 ? 1 / length : 0;
        for (int i = 0; i < basis[p].length; i++) {
            basis[p][i] *= scale;
        }
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
