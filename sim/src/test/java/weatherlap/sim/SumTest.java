package weatherlap.sim;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SumTest {
    /** Reference: the compensated sum of the JDK, to the digit. */
    @Property
    void sumsAsAStreamDoes(@ForAll List<@DoubleRange(min = -1e9, max = 1e9) Double> values) {
        double[] same = values.stream().mapToDouble(value -> value).toArray();
        assertThat(Sum.of(values)).isEqualTo(Arrays.stream(same).sum());
        assertThat(Sum.of(same)).isEqualTo(Arrays.stream(same).sum());
    }

    @Test
    void keepsWhatAdditionDrops() {
        assertThat(Sum.of(new double[] {1, 1e-16, 1e-16, 1e-16, 1e-16})).isGreaterThan(1);
        assertThat(Sum.of(new double[0])).isZero();
    }
}
