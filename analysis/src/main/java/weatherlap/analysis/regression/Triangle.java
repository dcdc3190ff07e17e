package weatherlap.analysis.regression;

import java.util.Arrays;
import java.util.stream.Stream;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Any number of equations as a triangle with the same least squares: |Xβ − y|² = |Rβ − z|² + beyond. Equations are taken in blocks, each
 * turned under the triangle by Householder reflections, so that memory does not grow with them and nothing is lost to squaring.
 *
 * @param root R, upper triangular
 * @param right z
 * @param beyond squares that no coefficients explain
 * @param observations for which the equations stand
 * @see "Golub, Van Loan 1996, Matrix Computations, 5.2 (Householder QR) and 12.5 (appending rows)"
 */
public record Triangle(RealMatrix root, RealVector right, double beyond, double observations) {
    private static final int BLOCK = 64;

    /** Squares of what rounding left of a column; smaller ones would be lost on the way and leave no number at all. */
    private static final double NOTHING = 1e-290;

    public static Triangle of(int columns, Stream<Equation> equations) {
        Turning turning = new Turning(columns);
        equations.forEachOrdered(turning::add);
        return turning.triangle();
    }

    public static Triangle of(RealMatrix design, RealVector observed) {
        Turning turning = new Turning(design.getColumnDimension());
        for (int row = 0; row < design.getRowDimension(); row++) {
            turning.add(Equation.of(design.getRow(row), observed.getEntry(row)));
        }
        return turning.triangle();
    }

    public int columns() {
        return root.getColumnDimension();
    }

    /** Collects equations; the last column of each row is the right side. */
    private static final class Turning {
        private final int columns;
        private final double[][] top;
        private final double[][] block;
        private final double[] dots;
        private int filled;
        private double beyond;
        private double observations;

        Turning(int columns) {
            this.columns = columns;
            top = new double[columns][columns + 1];
            block = new double[BLOCK][columns + 1];
            dots = new double[columns + 1];
        }

        void add(Equation equation) {
            double root = Math.sqrt(equation.count());
            double[] row = block[filled++];
            for (int i = 0; i < equation.columns().length; i++) {
                row[equation.columns()[i]] += root * equation.weights()[i];
            }
            row[columns] = root * equation.observed();
            observations += equation.count();
            if (filled == BLOCK) {
                turn();
            }
        }

        private void turn() {
            for (int k = 0; k < columns; k++) {
                reflect(k);
            }
            for (int i = 0; i < filled; i++) {
                beyond += block[i][columns] * block[i][columns];
                Arrays.fill(block[i], 0);
            }
            filled = 0;
        }

        /** Turns what the block holds in a column into the triangle's diagonal. */
        private void reflect(int k) {
            double below = 0;
            for (int i = 0; i < filled; i++) {
                below += block[i][k] * block[i][k];
            }
            if (below < NOTHING) {
                for (int i = 0; i < filled; i++) {
                    block[i][k] = 0;
                }
                return;
            }
            double[] row = top[k];
            double norm = Math.sqrt(row[k] * row[k] + below);
            double head = row[k] + Math.copySign(norm, row[k]);
            double scale = 2 / (head * head + below);
            dots(k, head);
            for (int j = k + 1; j <= columns; j++) {
                dots[j] *= scale;
                row[j] -= head * dots[j];
            }
            row[k] -= head * scale * (head * row[k] + below);
            for (int i = 0; i < filled; i++) {
                addTimes(-block[i][k], dots, block[i], k + 1);
                block[i][k] = 0;
            }
        }

        /** Of the reflection with each later column. */
        private void dots(int k, double head) {
            for (int j = k + 1; j <= columns; j++) {
                dots[j] = head * top[k][j];
            }
            for (int i = 0; i < filled; i++) {
                addTimes(block[i][k], block[i], dots, k + 1);
            }
        }

        /** Adds a multiple of a row to another from a column on: bare, so that the compiler takes several columns at a time. */
        private static void addTimes(double factor, double[] row, double[] to, int from) {
            if (factor == 0) {
                return;
            }
            for (int j = from; j < to.length; j++) {
                to[j] += factor * row[j];
            }
        }

        Triangle triangle() {
            turn();
            RealMatrix root = MatrixUtils.createRealMatrix(columns, columns);
            RealVector right = new ArrayRealVector(columns);
            for (int r = 0; r < columns; r++) {
                for (int c = r; c < columns; c++) {
                    root.setEntry(r, c, top[r][c]);
                }
                right.setEntry(r, top[r][columns]);
            }
            return new Triangle(root, right, beyond, observations);
        }
    }
}
