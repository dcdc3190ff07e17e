package weatherlap.analysis.regression;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Least squares under β ≥ 0 by the active-set method: variables enter one at a time, the one with the steepest descent first, and
 * leave where the step to the unconstrained solution of the entered ones would cross zero.
 *
 * @see "Lawson, Hanson 1974, Solving Least Squares Problems, ch. 23, algorithm NNLS"
 */
public final class NonNegativeLeastSquares {
    private static final double TOLERANCE = 1e-10;

    private final RealMatrix matrix;
    private final RealVector right;
    private final int bounded;
    private final boolean[] entered;
    private double[] solution;

    private NonNegativeLeastSquares(RealMatrix matrix, RealVector right, int bounded) {
        this.matrix = matrix;
        this.right = right;
        this.bounded = bounded;
        this.entered = new boolean[matrix.getColumnDimension()];
        Arrays.fill(entered, bounded, entered.length, true);
        this.solution = unconstrained();
    }

    /**
     * Minimises |Aβ − b| where the first coefficients are 0 or more, for A of full column rank.
     *
     * @param bounded how many may not fall below zero; the others are free
     */
    public static RealVector solve(RealMatrix matrix, RealVector right, int bounded) {
        RealVector free = new QRDecomposition(matrix).getSolver().solve(right);
        if (bounded == 0 || free.getSubVector(0, bounded).getMinValue() >= 0) {
            // no minus zero
            return free.mapAdd(0.0);
        }
        NonNegativeLeastSquares search = new NonNegativeLeastSquares(matrix, right, bounded);
        for (int next = search.steepest(); next >= 0; next = search.steepest()) {
            search.entered[next] = true;
            search.settle();
        }
        return new ArrayRealVector(search.solution);
    }

    /** The variable at zero along which the sum of squares falls fastest; −1: none does. */
    private int steepest() {
        RealVector descent = matrix.preMultiply(right.subtract(matrix.operate(new ArrayRealVector(solution))));
        double scale = matrix.getFrobeniusNorm() * Math.max(right.getNorm(), 1);
        int best = -1;
        for (int i = 0; i < entered.length; i++) {
            boolean steeper = best < 0 || descent.getEntry(i) > descent.getEntry(best);
            if (!entered[i] && descent.getEntry(i) > TOLERANCE * scale && steeper) {
                best = i;
            }
        }
        return best;
    }

    /** Moves to the solution of the entered variables, letting go of those that reach zero on the way. */
    private void settle() {
        double[] target = unconstrained();
        while (IntStream.range(0, bounded).anyMatch(i -> entered[i] && target[i] <= 0)) {
            double step = 1;
            for (int i = 0; i < bounded; i++) {
                if (entered[i] && target[i] <= 0) {
                    step = Math.min(step, solution[i] / (solution[i] - target[i]));
                }
            }
            for (int i = 0; i < target.length; i++) {
                solution[i] += step * (target[i] - solution[i]);
                if (i < bounded && entered[i] && solution[i] <= TOLERANCE * Math.abs(target[i])) {
                    entered[i] = false;
                    solution[i] = 0;
                }
            }
            double[] again = unconstrained();
            System.arraycopy(again, 0, target, 0, target.length);
        }
        solution = target;
    }

    private double[] unconstrained() {
        int[] columns =
                IntStream.range(0, entered.length).filter(i -> entered[i]).toArray();
        double[] full = new double[entered.length];
        if (columns.length == 0) {
            return full;
        }
        int[] rows = IntStream.range(0, matrix.getRowDimension()).toArray();
        RealMatrix part =
                MatrixUtils.createRealMatrix(matrix.getSubMatrix(rows, columns).getData());
        double[] solved = new QRDecomposition(part).getSolver().solve(right).toArray();
        for (int c = 0; c < columns.length; c++) {
            full[columns[c]] = solved[c];
        }
        return full;
    }
}
