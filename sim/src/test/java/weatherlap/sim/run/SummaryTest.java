package weatherlap.sim.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;
import org.junit.jupiter.api.Test;

class SummaryTest {
    /** Reference: Commons Math Percentile, estimation type R-7. */
    @Test
    void quantilesAreThoseOfDefinitionSeven() {
        double[] draws = {9, 2, 7.5, 3, 3, 11, 0.5};
        Percentile reference = new Percentile().withEstimationType(EstimationType.R_7);
        Summary summary = Summary.of(draws);
        assertThat(summary.p10()).isCloseTo(reference.evaluate(draws, 10), within(1e-12));
        assertThat(summary.p50()).isCloseTo(reference.evaluate(draws, 50), within(1e-12));
        assertThat(summary.p90()).isCloseTo(reference.evaluate(draws, 90), within(1e-12));
        assertThat(summary.mean()).isCloseTo(36.0 / 7, within(1e-12));
        assertThat(draws[0]).isEqualTo(9);
    }

    @Test
    void oneDrawIsAllItsQuantiles() {
        assertThat(Summary.of(new double[] {4})).isEqualTo(new Summary(4, 4, 4, 4));
    }
}
