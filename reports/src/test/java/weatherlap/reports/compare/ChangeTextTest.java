package weatherlap.reports.compare;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import weatherlap.analysis.choice.TippingPoints;
import weatherlap.sim.method.Contrast;

class ChangeTextTest {
    /** Dearer repairs favour the method that leaks less, whichever that is: the gap in cost at twice the factor tells which. */
    @Test
    void whoIsAheadAboveThePointFollowsWhoLosesLess() {
        for (Contrast contrast : Contrast.all()) {
            for (double damageGapUsd : new double[] {-900, 900}) {
                TippingPoints points = new TippingPoints(-damageGapUsd / 3, damageGapUsd, 0);
                double factor = points.repairFactor().orElseThrow();
                boolean firstAhead = points.priceGapUsd() + 2 * factor * damageGapUsd < 0;
                assertThat(ChangeText.aheadAbove(contrast, damageGapUsd))
                        .startsWith("above that " + (firstAhead ? contrast.first() : contrast.second()).inSentence()
                                + " is ahead");
            }
        }
    }
}
