package weatherlap.sim.random;

import java.util.Arrays;
import org.apache.commons.statistics.descriptive.Quantile;
import org.apache.commons.statistics.descriptive.Quantile.EstimationMethod;

/**
 * Draws by rank: they fall into bins of equal width between the least and the greatest, and only bins that hold a rank asked for are
 * looked into: sorted where they hold few draws, else cut into bins in turn. A quantile at p of n draws lies at position p (n − 1),
 * between neighbours on a straight line (definition 7 of Hyndman and Fan 1996).
 */
public final class RankedDraws {
    private static final Quantile QUANTILE = Quantile.withDefaults().with(EstimationMethod.HF7);
    private static final int BINS = 64;
    private static final int FEW = 16;

    /** Bin after bin, those in {@link #sorted} in order. */
    private final double[] binned;

    /** Where each bin begins, and where the last ends. */
    private final int[] begins = new int[BINS + 1];

    private final boolean[] sorted = new boolean[BINS];

    /** Bins of many draws, each when it is first looked into. */
    private RankedDraws[] within;

    private RankedDraws(double[] draws) {
        double least = draws[0];
        double greatest = draws[0];
        for (double draw : draws) {
            least = draw < least ? draw : least;
            greatest = draw > greatest ? draw : greatest;
        }
        if (least == greatest) {
            binned = draws;
            Arrays.fill(begins, 1, BINS + 1, draws.length);
            sorted[0] = true;
            return;
        }
        double binsPerUnit = BINS / (greatest - least);
        byte[] bin = new byte[draws.length];
        int[] next = new int[BINS];
        for (int d = 0; d < bin.length; d++) {
            int b = Math.min(BINS - 1, (int) ((draws[d] - least) * binsPerUnit));
            bin[d] = (byte) b;
            next[b]++;
        }
        for (int b = 0; b < BINS; b++) {
            begins[b + 1] = begins[b] + next[b];
            next[b] = begins[b];
        }
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
        int from = begins[bin];
        int to = begins[bin + 1];
        if (!sorted[bin] && to - from > FEW && to - from < binned.length) {
            return within(bin, from, to).at(rank - from);
        }
        if (!sorted[bin]) {
            sort(from, to);
            sorted[bin] = true;
        }
        return binned[rank];
    }

    private RankedDraws within(int bin, int from, int to) {
        if (within == null) {
            within = new RankedDraws[BINS];
        }
        if (within[bin] == null) {
            within[bin] = new RankedDraws(Arrays.copyOfRange(binned, from, to));
        }
        return within[bin];
    }

    /** By insertion: cheapest for a few. */
    private void sort(int from, int to) {
        for (int i = from + 1; i < to; i++) {
            double draw = binned[i];
            int place = i;
            while (place > from && binned[place - 1] > draw) {
                binned[place] = binned[place - 1];
                place--;
            }
            binned[place] = draw;
        }
    }
}
