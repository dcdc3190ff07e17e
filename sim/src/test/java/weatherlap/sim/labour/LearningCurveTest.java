package weatherlap.sim.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LearningCurveTest {
    /** Validation. Published tables of the unit (Crawford) model: 80 % unit 8 = 0.5120, unit 20 = 0.3812; totals to six places. */
    @ParameterizedTest
    @CsvSource({"0.8, 8, 0.512, 5.345914", "0.8, 20, 0.381208, 10.484943"})
    void tabulatedAtEightyPercent(double slope, int n, double unit, double total) {
        LearningCurve curve = new LearningCurve(slope);
        assertThat(curve.unit(n)).isCloseTo(unit, within(1e-6));
        assertThat(curve.total(n)).isCloseTo(total, within(1e-6));
    }

    /** Validation. The same tables at 90 %: unit 8 = 0.729, total of eight 6.573726. */
    @Test
    void tabulatedAtNinetyPercent() {
        LearningCurve curve = new LearningCurve(0.9);
        assertThat(curve.unit(8)).isCloseTo(0.729, within(1e-12));
        assertThat(curve.total(8)).isCloseTo(6.573726, within(1e-6));
    }

    /** The cumulative-average (Wright) curve would put the total of eight at 8 · 0.512 = 4.096. */
    @Test
    void notTheCumulativeAverageCurve() {
        assertThat(new LearningCurve(0.8).total(8)).isGreaterThan(5.3);
    }

    @Property
    void doublingTheCountTimesTheSlope(
            @ForAll @DoubleRange(min = 0.5, max = 1) double slope, @ForAll @IntRange(min = 1, max = 50) int n) {
        LearningCurve curve = new LearningCurve(slope);
        assertThat(curve.unit(2 * n)).isCloseTo(slope * curve.unit(n), within(1e-12));
    }

    @Test
    void noLearningAndNoOpenings() {
        assertThat(new LearningCurve(1).mean(9)).isEqualTo(1);
        assertThat(new LearningCurve(0.8).mean(0)).isEqualTo(1);
    }
}
