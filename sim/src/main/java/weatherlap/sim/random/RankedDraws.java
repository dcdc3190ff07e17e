package weatherlap.sim.random;

import java.util.Arrays;
import org.apache.commons.statistics.descriptive.Quantile;
import org.apache.commons.statistics.descriptive.Quantile.EstimationMethod;

/**
 * Draws by rank: they fall into bins of equal width between the least and the greatest, and only bins that hold a rank asked for are
 * sorted. A quantile at p of n draws lies at position p (n − 1), between neighbours on a straight line (definition 7 of Hyndman and
 * Fan 1996).
 */
public final class RankedDraws {
    private static final Quantile QUANTILE = Quantile.withDefaults().with(EstimationMethod.HF7);
    private static final int BINS = 64;

    /** Bin after bin, those in {@link #sorted} in order. */
    private final double[] binned;

    /** Where each bin begins, and where the last ends. */
    private final int[] begins = new int[BINS + 1];

    private final boolean[] sorted = new boolean[BINS];

    private RankedDraws(double[] draws) {
        double least = draws[0];
        double greatest = draws[0];
        for (double draw : draws) {
            least = draw < least ? draw : least;
            greatest = draw > greatest ? draw : greatest;
        }
        double binsPerUnit = BINS / (greatest - least);
        int[] bin = new int[draws.length];
        for (int d = 0; d < bin.length; d++) {
            bin[d] = Math.min(BINS - 1, (int) ((draws[d] - least) * binsPerUnit));
            begins[bin[d] + 1]++;
        }
        for (int b = 1; b <= BINS; b++) {
            begins[b] += begins[b - 1];
        }
        int[] next = begins.clone();
        binned = new double[draws.length];
        for (int d = 0; d < bin.length; d++) {
            binned[next[bin[d]]++] = draws[d];
        }
    }

    /** Quantiles of draws, which are left as they are. */
    public static double[] quantiles(double[] draws, double... probabilities) {
        return QUANTILE.evaluate(draws.length, new RankedDraws(draws)::at, probabilities);
    }

    /** The draw of a rank, the least having 0. */
    private double at(int rank) {
        int bin = 0;
        while (begins[bin + 1] <= rank) {
            bin++;
        }
        if (!sorted[bin]) {
            Arrays.sort(binned, begins[bin], begins[bin + 1]);
            sorted[bin] = true;
        }
        return binned[rank];
    }
}
