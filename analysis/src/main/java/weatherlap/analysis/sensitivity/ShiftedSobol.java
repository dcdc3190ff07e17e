package weatherlap.analysis.sensitivity;

import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.PermutationSampler;

/**
 * The first points of a Sobol' sequence under a random digital shift: the binary digits of each coordinate are added, without carry, to
 * those of its own random number. Every point is then uniform, and the balance of the sequence is kept. Which coordinate has which
 * dimension is drawn too: some pairs of dimensions fill their square badly, and repeats that all had the same pairs would not show it
 * in their error.
 *
 * @see "Joe and Kuo 2008, SIAM J. Sci. Comput. 30, 2635-2654 (directions); Lemieux 2009, Monte Carlo and Quasi-Monte Carlo Sampling,
 *     section 6.2 (digital shift); Owen 2020, arXiv:2008.08051 (why the first point stays)"
 */
final class ShiftedSobol {
    /** Dimensions of the direction numbers that Commons Math carries. */
    static final int MOST_DIMENSIONS = 1000;

    /** Binary digits of a coordinate; points lie in the middle of cells, so never on 0 or 1. */
    private static final int DIGITS = 52;

    private static final double CELLS = 0x1.0p52;

    private ShiftedSobol() {}

    static double[][] points(int count, int dimensions, UniformRandomProvider stream) {
        long[] shift = new long[dimensions];
        for (int j = 0; j < dimensions; j++) {
            shift[j] = stream.nextLong() >>> (Long.SIZE - DIGITS);
        }
        int[] dimension = PermutationSampler.natural(dimensions);
        PermutationSampler.shuffle(stream, dimension);
        SobolSequenceGenerator sequence = new SobolSequenceGenerator(dimensions);
        double[][] points = new double[count][];
        for (int i = 0; i < count; i++) {
            double[] at = sequence.nextVector();
            points[i] = new double[dimensions];
            for (int j = 0; j < dimensions; j++) {
                long digits = (long) (at[dimension[j]] * CELLS) ^ shift[j];
                points[i][j] = (digits + 0.5) / CELLS;
            }
        }
        return points;
    }
}
