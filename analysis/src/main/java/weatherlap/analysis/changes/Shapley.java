package weatherlap.analysis.changes;

import java.util.function.IntFunction;
import org.apache.commons.math3.util.CombinatoricsUtils;
import weatherlap.sim.Check;

/**
 * The part of a sum that each of several changes has, when the order they are made in is as good as any other: the mean of what a
 * change adds, over all orders. The parts sum to the whole.
 *
 * @see "Shapley, L. S. (1953), A value for n-person games, Contributions to the Theory of Games II"
 */
public final class Shapley {
    /** Beyond so many the worths of all sets are too many to find. */
    public static final int MOST = 8;

    private Shapley() {}

    /**
     * @param changes 1 to {@link #MOST}
     * @param worth of the set of changes whose bits are set, 0 to 2^changes - 1; asked once each; several numbers, always as many
     * @return by change and number
     */
    public static double[][] parts(int changes, IntFunction<double[]> worth) {
        Check.within("changes", changes, 1, MOST);
        double[][] worths = new double[1 << changes][];
        for (int set = 0; set < worths.length; set++) {
            worths[set] = worth.apply(set);
        }
        double[][] parts = new double[changes][worths[0].length];
        for (int change = 0; change < changes; change++) {
            for (int set = 0; set < worths.length; set++) {
                if ((set & 1 << change) == 0) {
                    add(parts[change], worths[set], worths[set | 1 << change], weight(Integer.bitCount(set), changes));
                }
            }
        }
        return parts;
    }

    /** Share of all orders in which just so many others come before. */
    private static double weight(int before, int changes) {
        return 1 / (changes * CombinatoricsUtils.binomialCoefficientDouble(changes - 1, before));
    }

    private static void add(double[] part, double[] without, double[] with, double weight) {
        for (int i = 0; i < part.length; i++) {
            part[i] += weight * (with[i] - without[i]);
        }
    }
}
