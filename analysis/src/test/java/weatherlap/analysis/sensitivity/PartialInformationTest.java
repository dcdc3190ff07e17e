package weatherlap.analysis.sensitivity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.rng.UniformRandomProvider;
import org.junit.jupiter.api.Test;
import weatherlap.analysis.sensitivity.PartialInformation.Worth;
import weatherlap.sim.random.Sampling;
import weatherlap.sim.random.Streams;

/** Two actions whose cost difference is normal and linear in the value: the worth is s · L(|μ|/s), L the unit normal loss integral. */
class PartialInformationTest {
    private static final int DRAWS = 20_000;
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    @Test
    void normalLinearCaseInClosedForm() {
        // Raiffa and Schlaifer 1961, Applied Statistical Decision Theory, on the linear loss: L(u) = φ(u) − u Φ(−u);
        // L(0.5) = 0.1978.
        assertThat(loss(0.5)).isCloseTo(0.1978, within(5e-5));
        double[] z = normal("known");
        double[] noise = normal("noise");
        for (double mean : new double[] {0, 50, -50, 120}) {
            double[] difference = new double[DRAWS];
            for (int i = 0; i < DRAWS; i++) {
                difference[i] = mean + 100 * z[i] + 150 * noise[i];
            }
            Worth worth = PartialInformation.on(z).worth(difference);
            double exact = 100 * loss(Math.abs(mean) / 100);
            assertThat(worth.error()).isBetween(0.1, 2.0);
            assertThat(worth.value()).isCloseTo(exact, within(4 * worth.error()));
        }
    }

    @Test
    void valueThatSaysNothingIsWorthNothing() {
        double[] difference = normal("noise");
        for (int i = 0; i < DRAWS; i++) {
            difference[i] = 1 + difference[i];
        }
        assertThat(PartialInformation.on(normal("known")).worth(difference).value())
                .isZero();
        assertThat(PartialInformation.on(new double[DRAWS]).worth(difference).value())
                .isZero();
    }

    @Test
    void worthOfSeveralChoicesAddsUp() {
        double[] z = normal("known");
        double[] other = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            other[i] = 0.3 - 2 * z[i];
        }
        PartialInformation known = PartialInformation.on(z);
        assertThat(known.worth(new double[][] {z, other}).value())
                .isCloseTo(known.worth(z).value() + known.worth(other).value(), within(1e-12));
    }

    @Test
    void polynomialOfTheValueIsFittedExactly() {
        double[] x = normal("known");
        double[] y = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            y[i] = 1 - x[i] + 0.5 * Math.pow(x[i], 4);
        }
        assertThat(PartialInformation.on(x).expected(y)).containsExactly(y, within(1e-9));
    }

    private static double loss(double u) {
        return NORMAL.density(u) - u * NORMAL.cumulativeProbability(-u);
    }

    private static double[] normal(String purpose) {
        UniformRandomProvider stream = new Streams(3).world(purpose);
        double[] draws = Sampling.STRATIFIED.uniforms(DRAWS, stream);
        for (int i = 0; i < DRAWS; i++) {
            draws[i] = NORMAL.inverseCumulativeProbability(draws[i]);
        }
        return draws;
    }
}
