package weatherlap.sim.random;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.statistics.descriptive.Quantile;
import org.apache.commons.statistics.descriptive.Quantile.EstimationMethod;
import org.junit.jupiter.api.Test;

class RankedDrawsTest {
    private static final Quantile REFERENCE =
            Quantile.withDefaults().withCopy(true).with(EstimationMethod.HF7);

    /** Reference: Commons Statistics, which selects by itself; to the digit. */
    private static void agree(double... draws) {
        double[] before = draws.clone();
        assertThat(RankedDraws.quantiles(draws, 0.1, 0.5, 0.9)).isEqualTo(REFERENCE.evaluate(draws, 0.1, 0.5, 0.9));
        assertThat(draws).isEqualTo(before);
    }

    @Property
    void quantilesAreThoseOfTheLibrary(
            @ForAll @Size(min = 1, max = 300) List<@DoubleRange(min = -1e6, max = 1e6) Double> draws) {
        agree(draws.stream().mapToDouble(draw -> draw).toArray());
    }

    /** All in one bin, at its edges, and ranges that no width of a bin can hold. */
    @Test
    void noSpreadIsTooNarrowOrTooWide() {
        agree(4);
        agree(3, 3, 3, 3, 3, 3);
        agree(1e300, 1, 2, 3, 4, 5, 6);
        agree(0, Double.MIN_VALUE, 2 * Double.MIN_VALUE, 3 * Double.MIN_VALUE, 9 * Double.MIN_VALUE);
        agree(-Double.MAX_VALUE, 7, 5, 3, Double.MAX_VALUE);
        agree(1, Math.nextUp(1.0), 1, Math.nextUp(1.0), Math.nextDown(1.0));
        agree(-3, -0.5, -1e-12, 0, 1e-12, 0.5, 3);
    }
}
