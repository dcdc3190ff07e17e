package weatherlap.analysis.sensitivity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class SwingTest {
    @Test
    void movesOneGroupAndLeavesTheRestAtTheMedian() {
        // Y = 10 X1 − 4 X2 X3. X1 from 0.1 to 0.9: −1 + 1, −1 + 9. X2 and X3 together: 5 − 0.04, 5 − 3.24.
        CubeModel model = points -> new double[][] {
            Arrays.stream(points).mapToDouble(x -> 10 * x[0] - 4 * x[1] * x[2]).toArray()
        };
        List<FactorGroup> groups = List.of(new FactorGroup("one", List.of(0)), new FactorGroup("two", List.of(1, 2)));

        List<Swing> swings = Swing.of(model, 3, groups, 0.1).get(0);

        assertThat(swings.get(0).low()).isCloseTo(0, within(1e-12));
        assertThat(swings.get(0).high()).isCloseTo(8, within(1e-12));
        assertThat(swings.get(1).low()).isCloseTo(4.96, within(1e-12));
        assertThat(swings.get(1).high()).isCloseTo(1.76, within(1e-12));
        assertThat(swings.get(1).width()).isCloseTo(3.2, within(1e-12));
    }
}
