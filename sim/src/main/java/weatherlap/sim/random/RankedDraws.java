package weatherlap.sim.random;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import org.apache.commons.statistics.descriptive.Quantile;
import org.apache.commons.statistics.descriptive.Quantile.EstimationMethod;

/**
 * Draws by rank: they fall into bins between the least and the greatest, and only bins that hold a rank asked for are looked into: sorted
 * where they hold few draws, else cut into bins in turn. Bins are of equal width in the bits of the numbers, which lie as their logarithms
 * do, nearly, so that they share out draws of many sizes too. A quantile at p of n draws lies at position p (n − 1), between
 * neighbours on a straight line (definition 7 of Hyndman and Fan 1996).
 */
public final class RankedDraws {
    private static final Quantile QUANTILE = Quantile.withDefaults().with(EstimationMethod.HF7);
    /** Bins of a column, as a power of two. */
    private static final int BITS = 7;

    /** Bins of a bin of many draws, likewise. */
    private static final int BITS_WITHIN = 4;

    private static final int FEW = 16;

    /** One for each thread, used again for each column. */
    private static final ThreadLocal<RankedDraws> SCRATCH = ThreadLocal.withInitial(() -> new RankedDraws(BITS));

    /** Of each draw, as {@link #swapped} has it. */
    private long[] keys = new long[0];

    /** Bin after bin, those in {@link #sorted} in order. */
    private long[] binned = new long[0];

    private final int bits;

    /** Where each bin begins, and where the last ends. */
    private final int[] begins;

    /** Where the next draw of each bin goes. */
    private final int[] next;

    private final boolean[] sorted;

    /** Where the rank asked for last lies: ranks are mostly asked for as they rise. */
    private int bin;

    /** The bin of many draws that was looked into last, and which it is. */
    private RankedDraws within;

    private int binWithin;

    private final IntToDoubleFunction ranked = this::at;

    private RankedDraws(int bits) {
        this.bits = bits;
        next = new int[1 << bits];
        begins = new int[next.length + 1];
        sorted = new boolean[next.length];
    }

    private IntToDoubleFunction of(double[] draws) {
        if (keys.length < draws.length) {
            keys = new long[draws.length];
        }
        long[] all = keys;
        long least = Long.MAX_VALUE;
        long greatest = Long.MIN_VALUE;
        for (int d = 0; d < draws.length; d++) {
            long key = swapped(Double.doubleToRawLongBits(draws[d]));
            all[d] = key;
            least = key < least ? key : least;
            greatest = key > greatest ? key : greatest;
        }
        bin(all, 0, draws.length, least, greatest);
        return ranked;
    }

    /** From the bits of a number to a whole number that lies as it does, and back: the smaller a negative one, the greater are its bits. */
    private static long swapped(long bits) {
        return bits ^ (bits >> Long.SIZE - 1 & Long.MAX_VALUE);
    }

    /** The draws from one on, up to another. */
    private void of(long[] draws, int from, int end) {
        long least = draws[from];
        long greatest = least;
        for (int d = from; d < end; d++) {
            least = Math.min(least, draws[d]);
            greatest = Math.max(greatest, draws[d]);
        }
        bin(draws, from, end, least, greatest);
    }

    private void bin(long[] draws, int from, int end, long least, long greatest) {
        if (binned.length < end) {
            binned = new long[end];
        }
        bin = 0;
        binWithin = -1;
        long[] placed = binned;
        int[] to = next;
        Arrays.fill(sorted, least == greatest);
        Arrays.fill(to, 0);
        int shift = Math.max(0, Long.SIZE - Long.numberOfLeadingZeros(greatest - least) - bits);
        for (int d = from; d < end; d++) {
            to[(int) (draws[d] - least >>> shift)]++;
        }
        for (int b = 0; b < to.length; b++) {
            begins[b + 1] = begins[b] + to[b];
            to[b] = begins[b];
        }
        for (int d = from; d < end; d++) {
            placed[to[(int) (draws[d] - least >>> shift)]++] = draws[d];
        }
    }

    /** Quantiles of draws, which are left as they are. */
    public static double[] quantiles(double[] draws, double... probabilities) {
        return QUANTILE.evaluate(draws.length, SCRATCH.get().of(draws), probabilities);
    }

    /** The draw of a rank, the least having 0. */
    private double at(int rank) {
        return Double.longBitsToDouble(swapped(keyAt(rank)));
    }

    private long keyAt(int rank) {
        bin = begins[bin] <= rank ? bin : 0;
        while (begins[bin + 1] <= rank) {
            bin++;
        }
        int from = begins[bin];
        int to = begins[bin + 1];
        if (!sorted[bin] && to - from > FEW) {
            return within(from, to).keyAt(rank - from);
        }
        if (!sorted[bin]) {
            sort(from, to);
            sorted[bin] = true;
        }
        return binned[rank];
    }

    private RankedDraws within(int from, int to) {
        if (within == null) {
            within = new RankedDraws(BITS_WITHIN);
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
            long draw = binned[i];
            int place = i;
            while (place > from && binned[place - 1] > draw) {
                binned[place] = binned[place - 1];
                place--;
            }
            binned[place] = draw;
        }
    }
}
