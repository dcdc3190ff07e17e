package weatherlap.analysis.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

class TriangleTest {
    @Test
    void hasTheSumsOfProductsOfTheEquations() {
        RealMatrix design = MatrixUtils.createRealMatrix(new double[][] {{1, 2, 0}, {3, 1, 1}, {0, 5, 2}, {1, 1, 4}});
        Triangle triangle = Triangle.of(design, new ArrayRealVector(new double[] {1, 2, 3, 4}));
        RealMatrix reference = new QRDecomposition(design).getR().getSubMatrix(0, 2, 0, 2);
        RealMatrix products = triangle.root().transpose().multiply(triangle.root());
        assertThat(products.subtract(reference.transpose().multiply(reference)).getNorm())
                .isCloseTo(0, within(1e-12));
    }

    /** Three jobs ask after sixty steps: what rounding leaves of a column must not become no number. */
    @Test
    void squaresTooSmallForANumberCountAsNothing() {
        RealMatrix design = MatrixUtils.createRealMatrix(new double[][] {{1e-162, 1}, {2e-162, 3}});
        Triangle triangle = Triangle.of(design, new ArrayRealVector(new double[] {1, 2}));
        assertThat(triangle.root().getEntry(0, 1)).isFinite();
        assertThat(Math.abs(triangle.root().getEntry(1, 1))).isCloseTo(Math.sqrt(10), within(1e-12));
        assertThat(triangle.beyond()).isCloseTo(5 - 49 / 10.0, within(1e-12));
    }
}
