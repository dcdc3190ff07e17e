package weatherlap.reports.callbacks;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import weatherlap.analysis.callbacks.LevelFit;
import weatherlap.sim.method.Method;

class CallbackTextTest {
    private static final LevelFit.Level OWN = new LevelFit.Level(0.33, 0.06, 0.80);

    /** What the records of a method leave open is no contradiction to what is fitted from those of all. */
    @Test
    void aLevelWithinItsIntervalIsNotCalledOff() {
        assertThat(CallbackText.apart(Method.FULL_FRAME, 0.59, OWN))
                .contains("0.59 times", "0.33 times", "no further apart than so few records can tell")
                .doesNotContain("too many");
        assertThat(CallbackText.apart(Method.FULL_FRAME, 0.95, OWN)).contains("do not explain", "too many of them.");
        assertThat(CallbackText.apart(Method.FULL_FRAME, 0.03, OWN)).contains("do not explain", "too few of them.");
    }
}
