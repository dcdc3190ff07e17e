package weatherlap.analysis.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;

class NonNegativeLeastSquaresTest {
    /**
     * By hand: columns (1, 1) and (1, 0), b = (0, 1). Without bounds β = (1, −1); with β₂ = 0 the best β₁ is the mean of b, 1/2.
     */
    @Test
    void aNegativeCoefficientStaysAtZero() {
        RealVector solution = NonNegativeLeastSquares.solve(
                MatrixUtils.createRealMatrix(new double[][] {{1, 1}, {1, 0}}),
                new ArrayRealVector(new double[] {0, 1}),
                2);
        assertThat(solution.toArray()).usingComparatorWithPrecision(1e-12).containsExactly(0.5, 0);
    }

    /** Karush-Kuhn-Tucker: β ≥ 0, gradient ≥ 0 where β = 0 and nought elsewhere; nought for those that are free. */
    @Property(tries = 300)
    void theSolutionIsBest(
            @ForAll @Size(60) List<@DoubleRange(min = -1, max = 1) Double> numbers,
            @ForAll @IntRange(max = 5) int bounded) {
        RealMatrix matrix = MatrixUtils.createRealMatrix(10, 5);
        RealVector right = new ArrayRealVector(10);
        for (int i = 0; i < 50; i++) {
            matrix.setEntry(i / 5, i % 5, numbers.get(i) + (i / 5 == i % 5 ? 2 : 0));
        }
        for (int i = 0; i < 10; i++) {
            right.setEntry(i, numbers.get(50 + i));
        }
        RealVector solution = NonNegativeLeastSquares.solve(matrix, right, bounded);
        RealVector gradient = matrix.preMultiply(matrix.operate(solution).subtract(right));
        for (int i = 0; i < 5; i++) {
            if (i < bounded) {
                assertThat(solution.getEntry(i)).isNotNegative();
                assertThat(gradient.getEntry(i)).isGreaterThan(-1e-8);
            } else {
                assertThat(gradient.getEntry(i)).isCloseTo(0, within(1e-8));
            }
            assertThat(solution.getEntry(i) * gradient.getEntry(i)).isCloseTo(0, within(1e-8));
        }
    }
}
