package weatherlap.analysis.calibration;

import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * What is believed of the rates before the totals of any job: a normal distribution.
 *
 * @param mean μ
 * @param root R, upper triangular, RᵀR the precision, so that R (β − μ) has independent errors of variance 1
 */
record RatePrior(RealVector mean, RealMatrix root) {

    /** Independent beliefs with a common pace: variances on the diagonal plus (spread · mean)(spread · mean)ᵀ. */
    static RatePrior ofSteps(RealVector mean, RealVector variance, double paceSpread) {
        RealVector pace = mean.mapMultiply(paceSpread);
        RealMatrix covariance =
                MatrixUtils.createRealDiagonalMatrix(variance.toArray()).add(pace.outerProduct(pace));
        RealMatrix whitener = MatrixUtils.inverse(new CholeskyDecomposition(covariance, 1e-10, 0).getL());
        return solved(whitener, whitener.operate(mean));
    }

    /** The same after more was seen: equations whose errors are independent with variance 1. */
    RatePrior with(RealMatrix equations, RealVector right) {
        int rows = root.getRowDimension();
        RealMatrix all = MatrixUtils.createRealMatrix(rows + equations.getRowDimension(), mean.getDimension());
        all.setSubMatrix(root.getData(), 0, 0);
        all.setSubMatrix(equations.getData(), rows, 0);
        return solved(all, root.operate(mean).append(right));
    }

    private static RatePrior solved(RealMatrix equations, RealVector right) {
        QRDecomposition qr = new QRDecomposition(equations);
        int columns = equations.getColumnDimension();
        return new RatePrior(qr.getSolver().solve(right), qr.getR().getSubMatrix(0, columns - 1, 0, columns - 1));
    }

    /** R⁻¹: its columns times independent standard normal draws are errors of the rates. */
    RealMatrix inverseRoot() {
        return inverse(root);
    }

    /** Inverse of an upper triangular matrix. */
    static RealMatrix inverse(RealMatrix upper) {
        int columns = upper.getColumnDimension();
        RealMatrix inverse = MatrixUtils.createRealMatrix(columns, columns);
        for (int c = 0; c < columns; c++) {
            RealVector column = new ArrayRealVector(columns);
            column.setEntry(c, 1);
            MatrixUtils.solveUpperTriangularSystem(upper, column);
            inverse.setColumnVector(c, column);
        }
        return inverse;
    }
}
