package weatherlap.sim.laps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** NAFS (AAMA/WDMA/CSA 101/I.S.2/A440): rating, test pressures and the wind they stand for. */
class DesignPressureTest {

    @Test
    void velocityPressuresOfTheUsualTable() {
        // q = 0.00256 V², as tabulated for 20, 60, 100, 125 mph.
        assertThat(DesignPressure.pressurePsf(20)).isCloseTo(1.02, within(0.005));
        assertThat(DesignPressure.pressurePsf(60)).isCloseTo(9.22, within(0.005));
        assertThat(DesignPressure.pressurePsf(100)).isCloseTo(25.60, within(0.005));
        assertThat(DesignPressure.pressurePsf(125)).isCloseTo(40.00, within(0.005));
    }

    @Test
    void dp15IsGovernedByTheLowestWaterTest() {
        DesignPressure dp15 = new DesignPressure(15, false);
        // 15 % would be 2.25 psf; the floor is 140 Pa = 2.924 psf, printed as 2.90.
        assertThat(dp15.waterTestPsf()).isCloseTo(2.924, within(0.03));
        assertThat(dp15.waterTestMph()).isCloseTo(33.8, within(0.2));
    }

    @Test
    void dp30AndDp50() {
        DesignPressure dp30 = new DesignPressure(30, false);
        assertThat(dp30.waterTestPsf()).isCloseTo(4.5, within(1e-12));
        assertThat(dp30.waterTestMph()).isCloseTo(41.9, within(0.05));
        DesignPressure dp50 = new DesignPressure(50, false);
        assertThat(dp50.waterTestPsf()).isCloseTo(7.5, within(1e-12));
        assertThat(dp50.waterTestMph()).isCloseTo(54.1, within(0.05));
        assertThat(dp50.waterTestMetresPerSecond()).isCloseTo(24.2, within(0.05));
        assertThat(dp50.designMph()).isCloseTo(139.75, within(0.02));
        assertThat(dp50.strengthTestPsf()).isCloseTo(75, within(1e-12));
    }

    @Test
    void classAwIsTestedAtAFifthAndNoneAboveTwelve() {
        assertThat(new DesignPressure(40, true).waterTestPsf()).isCloseTo(8, within(1e-12));
        assertThat(new DesignPressure(100, true).waterTestPsf()).isEqualTo(12);
    }

    @Test
    void backDamHoldsTheLowestTestPressure() {
        assertThat(DesignPressure.backDamMillimetres(137)).isCloseTo(13.97, within(0.005));
        // The rule of thumb is 10 Pa a millimetre.
        assertThat(DesignPressure.backDamMillimetres(200)).isCloseTo(20, within(0.5));
    }
}
