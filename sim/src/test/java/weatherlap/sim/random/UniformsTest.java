package weatherlap.sim.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class UniformsTest {
    private static final Uniforms UNIFORMS = new Uniforms(Sampling.SOBOL, 256, new Streams(4), List.of("a", "b", "c"));

    /** A (0, 2, 2) net in base 2 has one point of 4^k in each of its boxes; scrambling keeps that (Owen 1995). */
    @Test
    void theFirstTwoCausesFillEveryBoxOfEqualArea() {
        double[] a = UNIFORMS.world("a");
        double[] b = UNIFORMS.world("b");
        for (int bits = 0; bits <= 8; bits++) {
            int across = 1 << bits;
            int down = 256 / across;
            long boxes = IntStream.range(0, 256)
                    .map(d -> (int) (a[d] * across) * down + (int) (b[d] * down))
                    .distinct()
                    .count();
            assertThat(boxes).as("boxes of %d by %d", across, down).isEqualTo(256);
        }
    }

    @Test
    void everyCauseHasOneDrawInEachStratum() {
        for (String cause : List.of("a", "b", "c", "of no dimension")) {
            assertThat(Arrays.stream(UNIFORMS.house(cause, "H1"))
                            .mapToInt(u -> (int) (u * 256))
                            .distinct()
                            .count())
                    .isEqualTo(256);
        }
    }

    @Test
    void housesAreScrambledApart() {
        assertThat(UNIFORMS.house("a", "H1")).isNotEqualTo(UNIFORMS.house("a", "H2"));
        assertThat(UNIFORMS.house("a", "H1")).isEqualTo(UNIFORMS.house("a", "H1"));
    }

    /** Mean of a product of independent uniforms: 1/8; over 400 scramblings, within four standard errors of what they show. */
    @Test
    void meansAreUnbiased() {
        double[] means = IntStream.range(0, 400)
                .mapToDouble(seed -> {
                    Uniforms own = new Uniforms(Sampling.SOBOL, 100, new Streams(seed), List.of("a", "b", "c"));
                    double[] a = own.world("a");
                    double[] b = own.world("b");
                    double[] c = own.world("c");
                    return IntStream.range(0, 100)
                            .mapToDouble(d -> a[d] * b[d] * c[d])
                            .average()
                            .orElseThrow();
                })
                .toArray();
        double mean = Arrays.stream(means).average().orElseThrow();
        double spread =
                Math.sqrt(Arrays.stream(means).map(m -> (m - mean) * (m - mean)).sum() / 399);
        assertThat(mean).isCloseTo(0.125, within(4 * spread / Math.sqrt(400)));
        assertThat(spread).as("far below that of plain draws, 0.014").isLessThan(0.005);
    }
}
