package weatherlap.sim.labour;

import weatherlap.sim.Check;
import weatherlap.sim.Sum;

/**
 * The unit (Crawford) learning curve: opening n of a house takes n^(log2 slope) times the first.
 *
 * <p>Not the cumulative-average (Wright) curve, which puts the same power on the mean: at 80 % and eight units the totals are
 * 5.346 against 4.096.
 *
 * @param slope time of opening 2n over time of opening n, 0.5 to 1; 1: no learning
 * @see "Crawford's unit model as tabulated in cost-estimating handbooks; the tabulated values are in the tests"
 */
record LearningCurve(double slope) {
    public LearningCurve {
        Check.within("learning slope", slope, 0.5, 1);
    }

    /** Time of the nth unit, the first being 1. */
    public double unit(int n) {
        Check.within("unit", n, 1, Integer.MAX_VALUE);
        return Math.pow(n, Math.log(slope) / Math.log(2));
    }

    /** Time of the first n units together. */
    public double total(int n) {
        double[] units = new double[n];
        for (int unit = 0; unit < n; unit++) {
            units[unit] = unit(unit + 1);
        }
        return Sum.of(units);
    }

    /** Mean of the first n units; 1 for none. */
    public double mean(int n) {
        return n == 0 ? 1 : total(n) / n;
    }
}
