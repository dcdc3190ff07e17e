package weatherlap.analysis.backtest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.PoissonDistribution;
import org.junit.jupiter.api.Test;

class ForecastTest {
    /**
     * Validation: CRPS(N(μ, σ²), y) = σ [ z (2Φ(z) − 1) + 2φ(z) − 1/√π ], z = (y − μ)/σ, Gneiting and Raftery 2007, 4.2. Two hundred points
     * stand for the distribution, hence 1 %.
     */
    @Test
    void scoresANormalAsItsClosedFormDoes() {
        NormalDistribution standard = new NormalDistribution(null, 0, 1);
        NormalDistribution normal = new NormalDistribution(null, 30, 4);
        Forecast forecast = Forecast.ofQuantiles(normal::inverseCumulativeProbability);
        for (double came : new double[] {18, 27, 30, 31.5, 45}) {
            double z = (came - 30) / 4;
            double closed = 4
                    * (z * (2 * standard.cumulativeProbability(z) - 1)
                            + 2 * standard.density(z)
                            - 1 / Math.sqrt(Math.PI));
            assertThat(forecast.score(came)).isCloseTo(closed, within(0.01 * closed));
        }
    }

    /** By hand: values 1, 2, 4 and 3 came: (2 + 1 + 1)/3 − (1 + 3 + 2)·2/18 = 4/3 − 2/3. */
    @Test
    void scoresAnEnsembleByItsSums() {
        assertThat(Forecast.of(4, 1, 2).score(3)).isCloseTo(2.0 / 3, within(1e-12));
        assertThat(Forecast.of(7).score(4)).isEqualTo(3);
    }

    @Test
    void countsAreThoseOfPoissonWhereTheRateIsKnown() {
        Forecast count = Forecast.count(2.3, 0);
        PoissonDistribution poisson = new PoissonDistribution(2.3);
        for (int n = 0; n < 7; n++) {
            assertThat(count.upTo(n)).isCloseTo(poisson.cumulativeProbability(n), within(1.0 / Forecast.POINTS));
        }
        Forecast wide = Forecast.count(2.3, 0.8);
        assertThat(wide.mean()).isCloseTo(2.3, within(0.06));
        assertThat(wide.quantile(0.95)).isGreaterThan(count.quantile(0.95));
        assertThat(Forecast.count(0, 1).upTo(0)).isOne();
    }

    @Test
    void aLognormalHasItsMean() {
        assertThat(Forecast.lognormal(40, 0.2).mean()).isCloseTo(40, within(0.05));
        assertThat(Forecast.lognormal(40, 0).isSpread()).isFalse();
    }
}
