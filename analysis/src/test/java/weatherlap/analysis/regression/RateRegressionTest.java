package weatherlap.analysis.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RateRegressionTest {
    /** A certified data set: three lines of text, then a response and its predictors a line. */
    private record Certified(RealMatrix design, RealVector observed, double[] coefficients, double noise) {
        static Certified read(String name) throws IOException {
            List<String> lines;
            try (InputStream in = RateRegressionTest.class.getResourceAsStream(name)) {
                lines = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                        .lines()
                        .toList();
            }
            double[][] rows = lines.stream().skip(3).map(Certified::numbers).toArray(double[][]::new);
            double[] observed = Arrays.stream(rows).mapToDouble(row -> row[0]).toArray();
            for (double[] row : rows) {
                row[0] = 1;
            }
            return new Certified(
                    MatrixUtils.createRealMatrix(rows),
                    new ArrayRealVector(observed),
                    numbers(lines.get(1).substring(lines.get(1).indexOf(':') + 1)),
                    Double.parseDouble(lines.get(2).substring(lines.get(2).indexOf(':') + 1)));
        }

        private static double[] numbers(String line) {
            return Arrays.stream(line.strip().split("\\s+"))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
        }

        RateRegression flat() {
            return RateRegression.fit(
                    Triangle.of(design, observed), Optional.empty(), RateRegression.NoisePrior.NONE, 0);
        }
    }

    /** Validation. NIST StRD certified coefficients; a flat prior is ordinary least squares. */
    @ParameterizedTest
    @CsvSource({"longley.txt, 1e-8", "norris.txt, 1e-11", "wampler1.txt, 1e-6"})
    void aFlatPriorGivesCertifiedLeastSquares(String name, double relative) throws IOException {
        Certified certified = Certified.read(name);
        RateRegression fit = certified.flat();
        for (int i = 0; i < certified.coefficients.length; i++) {
            double value = certified.coefficients[i];
            assertThat(fit.coefficients().getEntry(i)).isCloseTo(value, within(Math.abs(value) * relative));
        }
        assertThat(fit.noise()).isCloseTo(certified.noise, within(Math.max(certified.noise, 1) * 1e-8));
    }

    /** Validation. NIST StRD, Longley: certified standard deviations of the estimates. */
    @Test
    void standardErrorsOfLongley() throws IOException {
        RateRegression fit = Certified.read("longley.txt").flat();
        double[] certified = {
            890420.383607373,
            84.9149257747669,
            0.0334910077722432,
            0.488399681651699,
            0.214274163161675,
            0.226073200069370,
            455.478499142212
        };
        for (int i = 0; i < certified.length; i++) {
            assertThat(fit.standardError(i)).isCloseTo(certified[i], within(certified[i] * 1e-7));
        }
    }

    /** One rate by hand: prior 10 ± 2, one observation 16 ± 2 (many degrees of noise): half way, error 2/√2. */
    @Test
    void priorAndDataWeighByTheirPrecision() {
        RateRegression fit = oneRate(10, 2, 16, 2, 1e9);
        assertThat(fit.coefficients().getEntry(0)).isCloseTo(13, within(1e-6));
        assertThat(fit.standardError(0)).isCloseTo(Math.sqrt(2), within(1e-6));
    }

    @Test
    void aSharpPriorDoesNotMoveAndAVagueOneYields() {
        assertThat(oneRate(10, 1e-6, 16, 2, 1e9).coefficients().getEntry(0)).isCloseTo(10, within(1e-6));
        assertThat(oneRate(10, 1e6, 16, 2, 1e9).coefficients().getEntry(0)).isCloseTo(16, within(1e-6));
    }

    private static RateRegression oneRate(double mean, double deviation, double seen, double noise, double degrees) {
        RatePrior prior = RatePrior.ofSteps(
                new ArrayRealVector(new double[] {mean}), new ArrayRealVector(new double[] {deviation * deviation}), 0);
        return RateRegression.fit(
                Triangle.of(
                        MatrixUtils.createRealMatrix(new double[][] {{1}}), new ArrayRealVector(new double[] {seen})),
                Optional.of(prior),
                new RateRegression.NoisePrior(noise, degrees),
                1);
    }

    /** Two steps of 10 min with a pace that may differ by 50 %: one seen at 20 takes the other along, which no job held. */
    @Test
    void thePaceOfAShopCarriesOver() {
        RatePrior prior = RatePrior.ofSteps(
                new ArrayRealVector(new double[] {10, 10}), new ArrayRealVector(new double[] {1, 1}), 0.5);
        RateRegression fit = RateRegression.fit(
                Triangle.of(
                        MatrixUtils.createRealMatrix(new double[][] {{1, 0}}), new ArrayRealVector(new double[] {20})),
                Optional.of(prior),
                new RateRegression.NoisePrior(1e-3, 1e9),
                0);
        assertThat(fit.coefficients().getEntry(1)).isCloseTo(10 + 10 * 25 / 26.0, within(1e-4));
    }

    @Test
    void tooFewObservationsForAFlatPrior() {
        assertThatThrownBy(() -> RateRegression.fit(
                        Triangle.of(MatrixUtils.createRealMatrix(1, 2), new ArrayRealVector(1)),
                        Optional.empty(),
                        RateRegression.NoisePrior.NONE,
                        0))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
