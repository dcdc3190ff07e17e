package weatherlap.sim.laps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import weatherlap.sim.laps.LookValue.ByFinding;

/** Whether it pays to open up one window first. */
class LookValueTest {

    private static final ByFinding FULL_FLANGE = new ByFinding(1000, 1000);
    private static final ByFinding INSERT = new ByFinding(1800, 600);

    @Test
    void perfectLookByHand() {
        // P = 0.4: insert costs 0.4·1800 + 0.6·600 = 1080 > 1000. Informed: 0.4·1000 + 0.6·600 = 760. Gain 240.
        LookValue look = LookValue.of(new SharedQuality(0.4, 5), 1, 1, FULL_FLANGE, INSERT, 150);
        assertThat(look.gainUsd()).isCloseTo(240, within(1e-9));
        assertThat(look.netUsd()).isCloseTo(90, within(1e-9));
    }

    @Test
    void aDoubtfulLookByHand() {
        // r = 0.8: shows 0.4·0.8 + 0.6·0.2 = 0.44; after it 8/11, or 0.4·0.2/0.56 = 1/7. Insert: 1472.73, or 771.43.
        // Informed: 0.44·1000 + 0.56·771.4286 = 872. Gain 128.
        LookValue look = LookValue.of(new SharedQuality(0.4, 5), 0.8, 1, FULL_FLANGE, INSERT, 150);
        assertThat(look.faultyProbability()).isCloseTo(0.44, within(1e-12));
        assertThat(look.insertUsd().faulty()).isCloseTo(1472.7273, within(1e-4));
        assertThat(look.gainUsd()).isCloseTo(128, within(1e-9));
        assertThat(look.netUsd()).isNegative();
    }

    @Test
    void whatOneWindowTellsOfTheOthersIsBetaBinomial() {
        // Beta(2, 3) and a certain look: others 3/6 after a fault, 2/6 after none. Insert on 3: 1800 + 2·1200 = 4200,
        // or 600 + 2·1000 = 2600.
        LookValue look = LookValue.of(new SharedQuality(0.4, 5), 1, 3, FULL_FLANGE, INSERT, 0);
        assertThat(look.insertUsd().faulty()).isCloseTo(4200, within(1e-6));
        assertThat(look.insertUsd().sound()).isCloseTo(2600, within(1e-6));
        // Today 3000 (full flange); informed 0.4·3000 + 0.6·2600 = 2760.
        assertThat(look.gainUsd()).isCloseTo(240, within(1e-6));
    }

    @Test
    void aLookThatCannotChangeTheChoiceIsWorthNothing() {
        ByFinding cheap = new ByFinding(900, 500);
        assertThat(LookValue.of(new SharedQuality(0.4, 5), 1, 1, FULL_FLANGE, cheap, 150)
                        .gainUsd())
                .isCloseTo(0, within(1e-9));
    }
}
