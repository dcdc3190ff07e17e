package weatherlap.analysis.changes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class ShapleyTest {
    /** Runways: each pays for its stretch with all who need it. Littlechild and Owen (1973), A simple expression for the Shapley value. */
    @Test
    void sharesTheCostOfARunway() {
        double[] needs = {8, 11, 13};
        double[][] parts = Shapley.parts(3, set -> new double[] {
            IntStream.range(0, 3)
                    .filter(i -> (set & 1 << i) != 0)
                    .mapToDouble(i -> needs[i])
                    .max()
                    .orElse(0)
        });
        assertThat(parts[0][0]).isCloseTo(8 / 3.0, within(1e-12));
        assertThat(parts[1][0]).isCloseTo(8 / 3.0 + 3 / 2.0, within(1e-12));
        assertThat(parts[2][0]).isCloseTo(8 / 3.0 + 3 / 2.0 + 2, within(1e-12));
    }

    /** One right glove against two left ones: 2/3, 1/6, 1/6, counted over the six orders by hand. */
    @Test
    void favorsTheScarceGlove() {
        double[][] parts = Shapley.parts(3, set -> new double[] {(set & 1) != 0 && (set & 6) != 0 ? 1 : 0});
        assertThat(Arrays.stream(parts).mapToDouble(part -> part[0]).toArray())
                .containsExactly(new double[] {2 / 3.0, 1 / 6.0, 1 / 6.0}, within(1e-12));
    }

    @Property(tries = 50)
    void partsSumToTheWhole(@ForAll @Size(32) List<@DoubleRange(min = -1e6, max = 1e6) Double> worths) {
        double[][] parts = Shapley.parts(5, set -> new double[] {worths.get(set)});
        assertThat(Arrays.stream(parts).mapToDouble(part -> part[0]).sum())
                .isCloseTo(worths.get(31) - worths.get(0), within(1e-6));
    }
}
