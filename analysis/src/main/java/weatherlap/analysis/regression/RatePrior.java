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
    /** Share of a spread that a mean of 0 is off by. */
    private static final double NOTHING = 1e-3;

    /** Independent beliefs with a common pace: variances on the diagonal plus (spread · mean)(spread · mean)ᵀ. */
    public static RatePrior ofSteps(RealVector mean, RealVector variance, double paceSpread) {
        RealVector pace = mean.mapMultiply(paceSpread);
        RealMatrix covariance =
                MatrixUtils.createRealDiagonalMatrix(variance.toArray()).add(pace.outerProduct(pace));
        RealMatrix whitener = MatrixUtils.inverse(new CholeskyDecomposition(covariance, 1e-10, 0).getL());
        return new RatePrior(mean, new QRDecomposition(whitener).getR());
    }

    /**
     * The same with more coefficients after these, independent of them, each with mean 0: some of one kind whose mean is 0 too, and
     * others on their own.
     *
     * @param alike how many of one kind; 0: none
     * @param spread standard deviation about their mean
     * @param deviations of the others
     */
    public RatePrior beside(int alike, double spread, double... deviations) {
        int before = mean.getDimension();
        int more = alike + deviations.length;
        RealMatrix all = MatrixUtils.createRealMatrix(before + more, before + more);
        all.setSubMatrix(root.getData(), 0, 0);
        if (alike > 0) {
            all.setSubMatrix(aboutTheirMean(alike, spread).getData(), before, before);
        }
        for (int i = 0; i < deviations.length; i++) {
            all.setEntry(before + alike + i, before + alike + i, 1 / deviations[i]);
        }
        return new RatePrior(mean.append(new ArrayRealVector(more)), all);
    }

    /** Root of (I + 11ᵀ/(count · NOTHING²)) / spread²: their sum is known to be next to nothing. */
    private static RealMatrix aboutTheirMean(int count, double spread) {
        RealMatrix equations = MatrixUtils.createRealMatrix(count + 1, count);
        for (int i = 0; i < count; i++) {
            equations.setEntry(i, i, 1 / spread);
            equations.setEntry(count, i, 1 / (Math.sqrt(count) * NOTHING * spread));
        }
        return new QRDecomposition(equations).getR().getSubMatrix(0, count - 1, 0, count - 1);
    }

    /**
     * The same belief about coefficients that are reckoned otherwise: each is lower by so much for every unit of the last one.
     *
     * @param lower of the first coefficients
     */
    public RatePrior reckoned(RealVector lower) {
        int last = mean.getDimension() - 1;
        RealMatrix change = MatrixUtils.createRealIdentityMatrix(last + 1);
        for (int i = 0; i < lower.getDimension(); i++) {
            change.setEntry(i, last, lower.getEntry(i));
        }
        return new RatePrior(mean, root.multiply(change));
    }

    /**
     * The same after equations with independent errors of variance 1 were seen, given by their sums of products G = XᵀX and b = Xᵀy.
     * Summed up in units of the prior, I + R⁻ᵀGR⁻¹ = LLᵀ, in which nothing is smaller than 1.
     */
    public RatePrior with(RealMatrix products, RealVector right) {
        RealMatrix inverse = inverseRoot();
        RealMatrix own = inverse.transpose().multiply(products).multiply(inverse);
        // rounding leaves it a little lopsided
        RealMatrix sum = MatrixUtils.createRealIdentityMatrix(own.getRowDimension())
                .add(own.add(own.transpose()).scalarMultiply(0.5));
        CholeskyDecomposition cholesky = new CholeskyDecomposition(sum, 1e-15, 0);
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
