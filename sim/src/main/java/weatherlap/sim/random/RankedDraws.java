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

    /** One for each thread, used again for each column. */
    private static final ThreadLocal<RankedDraws> SCRATCH = ThreadLocal.withInitial(RankedDraws::new);

    /** Bin after bin, those in {@link #sorted} in order. */
    private double[] binned = new double[0];

    /** Of each draw. */
    private byte[] binOf = new byte[0];

    /** Where each bin begins, and where the last ends. */
    private final int[] begins = new int[BINS + 1];

    /** Where the next draw of each bin goes. */
    private final int[] next = new int[BINS];

    private final boolean[] sorted = new boolean[BINS];

    private int count;

    /** Where the rank asked for last lies: ranks are mostly asked for as they rise. */
    private int bin;

    /** The bin of many draws that was looked into last, and which it is. */
    private RankedDraws within;

    private int binWithin;

    private RankedDraws() {}

    /** The draws from one on, up to another. */
    private RankedDraws of(double[] draws, int from, int end) {
        if (binOf.length < end) {
            binned = new double[end];
            binOf = new byte[end];
        }
        count = end - from;
        bin = 0;
        binWithin = -1;
        double[] placed = binned;
        byte[] of = binOf;
        int[] to = next;
        double least = draws[from];
        double greatest = least;
        for (int d = from; d < end; d++) {
            double draw = draws[d];
            least = draw < least ? draw : least;
            greatest = draw > greatest ? draw : greatest;
        }
        Arrays.fill(sorted, least == greatest);
        Arrays.fill(to, 0);
        double binsPerUnit = BINS / (greatest - least);
        for (int d = from; d < end; d++) {
            int b = Math.min(BINS - 1, (int) ((draws[d] - least) * binsPerUnit));
            of[d] = (byte) b;
            to[b]++;
        }
        for (int b = 0; b < BINS; b++) {
            begins[b + 1] = begins[b] + to[b];
            to[b] = begins[b];
        }
        for (int d = from; d < end; d++) {
            placed[to[of[d]]++] = draws[d];
        }
        return this;
    }

    /** Quantiles of draws, which are left as they are. */
    public static double[] quantiles(double[] draws, double... probabilities) {
        return QUANTILE.evaluate(draws.length, SCRATCH.get().of(draws, 0, draws.length)::at, probabilities);
    }

    /** The draw of a rank, the least having 0. */
    private double at(int rank) {
        bin = begins[bin] <= rank ? bin : 0;
        while (begins[bin + 1] <= rank) {
            bin++;
        }
        int from = begins[bin];
        int to = begins[bin + 1];
        if (!sorted[bin] && to - from > FEW && to - from < count) {
            return within(from, to).at(rank - from);
        }
        if (!sorted[bin]) {
            sort(from, to);
            sorted[bin] = true;
        }
        return binned[rank];
    }

    private RankedDraws within(int from, int to) {
        if (within == null) {
            within = new RankedDraws();
        }
        if (binWithin != bin) {
            within.of(binned, from, to);
            binWithin = bin;
        }
        return within;
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
