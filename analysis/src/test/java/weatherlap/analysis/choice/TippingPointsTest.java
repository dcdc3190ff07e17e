package weatherlap.analysis.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TippingPointsTest {
    /** By hand: 3000 − 3500 − 200 = −700. Damage × 0.8: 3000 − 2800 − 200 = 0. Glass would have to be worth less than nothing. */
    @Test
    void aCaseByHand() {
        TippingPoints points = new TippingPoints(3000, -3500, -200);
        assertThat(points.gapUsd()).isEqualTo(-700);
        assertThat(points.repairFactor()).hasValueCloseTo(0.8, within(1e-12));
        assertThat(points.glassFactor()).isEmpty();
    }

    /** 3000 − 2000 − 500 = 500: glass × 2 closes it, and so does damage × 1.25. */
    @Test
    void theInsertAhead() {
        TippingPoints points = new TippingPoints(3000, -2000, -500);
        assertThat(points.glassFactor()).hasValueCloseTo(2.0, within(1e-12));
        assertThat(points.repairFactor()).hasValueCloseTo(1.25, within(1e-12));
    }

    @Test
    void nothingTurnsWhatCostsNothing() {
        assertThat(new TippingPoints(3000, 0, 0).repairFactor()).isEmpty();
    }
}
