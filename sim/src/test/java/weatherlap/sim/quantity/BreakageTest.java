package weatherlap.sim.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.SidingCondition;
import weatherlap.sim.work.WorkFixtures;

class BreakageTest {
    private static Scenario at(double temperatureF, double warmAndSound) {
        return WorkFixtures.scenario()
                .with(Scalar.TEMPERATURE_F, temperatureF)
                .with(Scalar.BREAKAGE_FRACTION, warmAndSound);
    }

    @ParameterizedTest
    @CsvSource({"80, 0.015", "50, 0.015", "41, 0.0325", "32, 0.05", "26, 0.0875", "20, 0.125", "0, 0.125"})
    void panelsBreakInTheCold(double temperatureF, double share) {
        assertThat(Breakage.fraction(SidingCondition.SOUND, at(temperatureF, 0.015)))
                .isCloseTo(share, within(1e-12));
    }

    @Test
    void brittlePanelsBreakTwiceAsOftenAndNoMoreThanAll() {
        assertThat(Breakage.fraction(SidingCondition.BRITTLE, at(60, 0.015))).isEqualTo(0.03);
        assertThat(Breakage.fraction(SidingCondition.UNKNOWN, at(60, 0.015))).isEqualTo(0.0225);
        assertThat(Breakage.fraction(SidingCondition.BRITTLE, at(0, 0.3))).isEqualTo(1);
    }
}
