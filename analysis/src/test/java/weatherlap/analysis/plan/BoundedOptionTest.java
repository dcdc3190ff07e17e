package weatherlap.analysis.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.PlanParts.Way;

class BoundedOptionTest {
    private static final double[] ONES = {1, 1};

    /** Half a million ways of a wall of twelve windows would take a gigabyte. */
    @Test
    void theDrawsOfAWallThatIsTooWetAreNotKept() {
        BoundedOption dryEnough = option(0.93);
        BoundedOption tooWet = option(0.94);
        assertThat(dryEnough.isDryEnough()).isTrue();
        assertThat(tooWet.isDryEnough()).isFalse();
        assertThat(dryEnough.dry()).isSameAs(dryEnough.dry()).containsExactly(tooWet.dry());
        assertThat(tooWet.dry()).isNotSameAs(tooWet.dry());
    }

    /** Seven windows, of which each stays dry with 0.99, six of them or all in the second draw: 0.9321 and 0.9415, mean 0.9368. */
    private static BoundedOption option(double leastDry) {
        FirstOpenings wall = FirstOpenings.NONE.with(way(0.99, 1), new BitSet());
        for (int o = 1; o < 7; o++) {
            wall = wall.with(way(0.99, 0.99), new BitSet());
        }
        return new BoundedOption(new WallOption(wall, 1000), ONES, ONES, 1, leastDry);
    }

    private static Way way(double... dry) {
        return new Way(Method.INSERT, 0, 0, 0, dry, List.of());
    }
}
