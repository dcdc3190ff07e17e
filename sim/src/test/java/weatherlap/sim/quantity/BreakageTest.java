package weatherlap.sim.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.sim.house.SidingCondition;

class BreakageTest {
    @ParameterizedTest
    @CsvSource({"80, 0.015", "50, 0.015", "41, 0.0325", "32, 0.05", "26, 0.0875", "20, 0.125", "0, 0.125"})
    void panelsBreakInTheCold(double temperatureF, double share) {
        assertThat(Breakage.fraction(0.015, temperatureF, SidingCondition.SOUND))
                .isCloseTo(share, within(1e-12));
    }

    @Test
    void brittlePanelsBreakTwiceAsOftenAndNoMoreThanAll() {
        assertThat(Breakage.fraction(0.015, 60, SidingCondition.BRITTLE)).isEqualTo(0.03);
        assertThat(Breakage.fraction(0.3, 0, SidingCondition.BRITTLE)).isEqualTo(1);
    }
}
