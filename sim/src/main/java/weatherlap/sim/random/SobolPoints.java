package weatherlap.sim.random;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * The first points of the Sobol' sequence, as cells: coordinate x of a point lies in cell ⌊x 2^m⌋ of 2^m equal ones, m the least with
 * 2^m at least the number of points. In each dimension no two of the points share a cell.
 *
 * @see "Joe and Kuo 2008, SIAM J. Sci. Comput. 30(5), 2635-2654 (the direction numbers, by way of Commons Math)"
 */
final class SobolPoints {
    /** Dimensions that can be asked for. */
    static final int DIMENSIONS = 64;

    private static final Map<Integer, int[][]> CELLS = new ConcurrentHashMap<>();

    private SobolPoints() {}

    /** m, for a number of points. */
    static int bits(int points) {
        return 32 - Integer.numberOfLeadingZeros(points - 1);
    }

    /**
     * Cells of one coordinate; not to be changed.
     *
     * @param dimension 0 to below {@link #DIMENSIONS}
     * @param points 1 or more
     */
    static int[] cells(int dimension, int points) {
        return CELLS.computeIfAbsent(points, SobolPoints::generate)[dimension];
    }

    private static int[][] generate(int points) {
        SobolSequenceGenerator sequence = new SobolSequenceGenerator(DIMENSIONS);
        int cellsAcross = 1 << bits(points);
        int[][] cells = new int[DIMENSIONS][points];
        for (int point = 0; point < points; point++) {
            double[] at = sequence.nextVector();
            for (int dimension = 0; dimension < DIMENSIONS; dimension++) {
                cells[dimension][point] = (int) (at[dimension] * cellsAcross);
            }
        }
        return cells;
    }
}
