package weatherlap.sim.random;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.PermutationSampler;

/** How the draws of one cause are laid over (0, 1). */
public enum Sampling {
    /**
     * Scrambled Sobol' points over the leading causes, one dimension each; other causes as {@link #STRATIFIED}. The points fill the cube
     * of the leading causes evenly, so that what two of them do together is sampled well too, not only what each does by itself.
     *
     * <p>A stream scrambles its dimension by itself: every half of every interval changes places with the other or not, at random and
     * down to the cells that hold one point, and within its cell the point lies anywhere. Each draw is then uniform and each mean unbiased.
     *
     * @see "Sobol' 1967, USSR Comput. Math. Math. Phys. 7(4), 86-112; Owen 1995, in Monte Carlo and Quasi-Monte Carlo Methods, 299-317
     *     (nested uniform scrambling)"
     */
    SOBOL {
        @Override
        double[] uniforms(int draws, UniformRandomProvider stream, int dimension) {
            return dimension < 0 || dimension >= SobolPoints.DIMENSIONS
                    ? STRATIFIED.uniforms(draws, stream)
                    : scrambled(SobolPoints.cells(dimension, draws), SobolPoints.bits(draws), stream);
        }
    },
    /**
     * One draw in each of n equal strata, in random order: Latin hypercube sampling over all causes, since each cause has its own order.
     * What adds up over the causes is then almost free of sampling error.
     *
     * @see "McKay, Beckman, Conover 1979, Technometrics 21(2), 239-245; Stein 1987, Technometrics 29(2), 143-151"
     */
    STRATIFIED {
        @Override
        double[] uniforms(int draws, UniformRandomProvider stream, int dimension) {
            int[] order = PermutationSampler.natural(draws);
            PermutationSampler.shuffle(stream, order);
            double[] uniforms = new double[draws];
            for (int d = 0; d < draws; d++) {
                uniforms[d] = within(order[d] + open(stream), draws);
            }
            return uniforms;
        }
    },
    /** Independent draws: plain Monte Carlo. */
    PLAIN {
        @Override
        double[] uniforms(int draws, UniformRandomProvider stream, int dimension) {
            double[] uniforms = new double[draws];
            for (int d = 0; d < draws; d++) {
                uniforms[d] = open(stream);
            }
            return uniforms;
        }
    };

    static final int NO_DIMENSION = -1;

    private static final double BELOW_ONE = Math.nextDown(1.0);

    /** Draws in the open interval (0, 1) of a cause that does not lead. */
    public double[] uniforms(int draws, UniformRandomProvider stream) {
        return uniforms(draws, stream, NO_DIMENSION);
    }

    /** The same of the cause that leads at a place, from 0; of one that does not, below 0. */
    abstract double[] uniforms(int draws, UniformRandomProvider stream, int dimension);

    private static double[] scrambled(int[] cells, int bits, UniformRandomProvider stream) {
        long[] swaps = new long[(1 << bits) / Long.SIZE + 1];
        for (int word = 0; word < swaps.length; word++) {
            swaps[word] = stream.nextLong();
        }
        int across = 1 << bits;
        int[] scrambled = scrambled(across, swaps);
        double[] uniforms = new double[cells.length];
        for (int d = 0; d < uniforms.length; d++) {
            uniforms[d] = within(scrambled[across + cells[d]] + open(stream), across);
        }
        return uniforms;
    }

    /**
     * Where each node of the binary tree of cells comes to lie in its level. Node k has the children 2k and 2k + 1, which change places
     * where bit k of the swaps is set; the cells are the last level, from their number on.
     */
    private static int[] scrambled(int cells, long[] swaps) {
        int[] scrambled = new int[2 * cells];
        for (int node = 1; node < cells; node++) {
            int swap = (int) (swaps[node >>> 6] >>> node) & 1;
            scrambled[2 * node] = scrambled[node] << 1 | swap;
            scrambled[2 * node + 1] = scrambled[node] << 1 | (1 ^ swap);
        }
        return scrambled;
    }

    /** A place on (0, cells) as a share of them; one that its last digits round up to the end stays below 1. */
    private static double within(double place, int cells) {
        double share = place / cells;
        return share < 1 ? share : BELOW_ONE;
    }

    /** From the middle of one of 2^52 equal cells, so never 0 or 1. */
    private static double open(UniformRandomProvider stream) {
        return ((stream.nextLong() >>> 12) + 0.5) * 0x1.0p-52;
    }
}
