package weatherlap.analysis.regression;

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
public record RatePrior(RealVector mean, RealMatrix root) {

    /** Independent beliefs with a common pace: variances on the diagonal plus (spread · mean)(spread · mean)ᵀ. */
    public static RatePrior ofSteps(RealVector mean, RealVector variance, double paceSpread) {
        RealVector pace = mean.mapMultiply(paceSpread);
        RealMatrix covariance =
                MatrixUtils.createRealDiagonalMatrix(variance.toArray()).add(pace.outerProduct(pace));
        RealMatrix whitener = MatrixUtils.inverse(new CholeskyDecomposition(covariance, 1e-10, 0).getL());
        return new RatePrior(mean, new QRDecomposition(whitener).getR());
    }

    /** The same with more coefficients after these, independent of them and of one another, each with mean 0. */
    public RatePrior beside(double[] deviations) {
        int before = mean.getDimension();
        RealMatrix all = MatrixUtils.createRealMatrix(before + deviations.length, before + deviations.length);
        all.setSubMatrix(root.getData(), 0, 0);
        for (int i = 0; i < deviations.length; i++) {
            all.setEntry(before + i, before + i, 1 / deviations[i]);
        }
        return new RatePrior(mean.append(new ArrayRealVector(deviations.length)), all);
    }

    /**
     * The same after equations with independent errors of variance 1 were seen, given by their sums of products G = XᵀX and b = Xᵀy.
     * Summed up in units of the prior, I + R⁻ᵀGR⁻¹ = LLᵀ, in which nothing is smaller than 1.
     */
    public RatePrior with(RealMatrix products, RealVector right) {
        RealMatrix inverse = inverseRoot();
        RealMatrix own = inverse.transpose().multiply(products).multiply(inverse);
        RealMatrix sum =
                MatrixUtils.createRealIdentityMatrix(own.getRowDimension()).add(own);
        CholeskyDecomposition cholesky = new CholeskyDecomposition(sum, 1e-6, 0);
        RealVector gap = inverse.preMultiply(right.subtract(products.operate(mean)));
        return new RatePrior(
                mean.add(inverse.operate(cholesky.getSolver().solve(gap))),
                cholesky.getLT().multiply(root));
    }

    /** R⁻¹: its columns times independent standard normal draws are errors of the rates. */
    public RealMatrix inverseRoot() {
        return inverse(root);
    }

    /** Inverse of an upper triangular matrix without a zero on its diagonal, by back substitution. */
    public static RealMatrix inverse(RealMatrix upper) {
        double[][] u = upper.getData();
        double[][] inverse = new double[u.length][u.length];
        for (int column = 0; column < u.length; column++) {
            inverse[column][column] = 1 / u[column][column];
            for (int row = column - 1; row >= 0; row--) {
                double sum = 0;
                for (int k = row + 1; k <= column; k++) {
                    sum += u[row][k] * inverse[k][column];
                }
                inverse[row][column] = -sum / u[row][row];
            }
        }
        return MatrixUtils.createRealMatrix(inverse);
    }
}
