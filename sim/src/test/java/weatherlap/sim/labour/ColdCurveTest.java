package weatherlap.sim.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColdCurveTest {
    /** Validation. Thomas and Yiakoumis 1987, equation from memory, evaluated apart from this code (humidity term left out). */
    @ParameterizedTest
    @CsvSource({"20, 2.039", "30, 1.414", "40, 1.121", "54.4, 1.000", "70, 1.097", "90, 1.425"})
    void productivityRatioOfThomasAndYiakoumis(double temperatureF, double ratio) {
        assertThat(ColdCurve.productivityRatio(temperatureF)).isCloseTo(ratio, within(0.0011));
    }

    /** The slope 0.0518 − 2.819 / T is nought at 54.42 °F. */
    @Test
    void fastestNearFiftyFourDegrees() {
        double best = ColdCurve.THOMAS_YIAKOUMIS.factor(54.42);
        assertThat(ColdCurve.THOMAS_YIAKOUMIS.factor(53)).isGreaterThan(best);
        assertThat(ColdCurve.THOMAS_YIAKOUMIS.factor(56)).isGreaterThan(best);
    }

    @Test
    void heldBelowTheColdestObservation() {
        assertThat(ColdCurve.THOMAS_YIAKOUMIS.factor(-20)).isEqualTo(ColdCurve.THOMAS_YIAKOUMIS.factor(25));
    }

    /** Validation. NECA 1974, efficiencies from memory; 35 °F is half way from 0.94 to 0.98. */
    @ParameterizedTest
    @CsvSource({
        "20, 0.89",
        "30, 0.94",
        "35, 0.96",
        "40, 0.98",
        "60, 1",
        "80, 0.98",
        "90, 0.93",
        "-10, 0.89",
        "110, 0.93"
    })
    void efficiencyOfNeca(double temperatureF, double efficiency) {
        assertThat(ColdCurve.NECA.factor(temperatureF)).isCloseTo(1 / efficiency, within(1e-12));
    }

    @Test
    void theCurvesDisagreeInTheCold() {
        assertThat(ColdCurve.THOMAS_YIAKOUMIS.factor(20) / ColdCurve.NECA.factor(20))
                .isGreaterThan(1.4);
    }
}
