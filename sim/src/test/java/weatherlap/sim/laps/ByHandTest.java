package weatherlap.sim.laps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Small sums of the leak model, worked out on paper. */
class ByHandTest {
    /** Odds of 1 : 4 times 3 are 3 : 4. */
    @Test
    void oddsTimesAFactor() {
        assertThat(FaultPrior.timesOdds(0.2, 3)).isCloseTo(3.0 / 7, within(1e-12));
        assertThat(FaultPrior.timesOdds(0.2, 1)).isCloseTo(0.2, within(1e-12));
    }

    /**
     * At one joint 10 L arrive at two lines: a fault of 0.5 behind the one that passes half, of 0.4 behind the one that passes a tenth; at
     * another joint 20 L at a line that passes all, before a fault of 0.3: 0.5 · 5 + 0.5 · 0.4 · 1 + 0.3 · 20.
     */
    @Test
    void waterExpectedPastTheFirstLines() {
        List<LeakPath> paths = List.of(
                new LeakPath(0, LapFixtures.HEAD_REVERSED, 0.4, 0.4, 10, 0.1),
                new LeakPath(1, LapFixtures.HEAD_REVERSED, 0.5, 0.5, 10, 0.5),
                new LeakPath(2, LapFixtures.JAMB_OPEN, 0.3, 0.3, 20, 1));
        assertThat(LeakPath.expectedPastFirstLine(paths)).isCloseTo(2.5 + 0.2 + 6, within(1e-12));
    }
}
