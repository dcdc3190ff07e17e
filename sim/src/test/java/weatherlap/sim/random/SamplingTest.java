package weatherlap.sim.random;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.apache.commons.math3.stat.inference.TestUtils;
import org.apache.commons.rng.UniformRandomProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SamplingTest {
    @ParameterizedTest
    @EnumSource(Sampling.class)
    void aStreamDependsOnItsNamesAlone(Sampling sampling) {
        double[] first = sampling.uniforms(100, new Streams(7).house("pace", "H1"));
        assertThat(sampling.uniforms(100, new Streams(7).house("pace", "H1"))).isEqualTo(first);
        assertThat(sampling.uniforms(100, new Streams(8).house("pace", "H1"))).isNotEqualTo(first);
        assertThat(sampling.uniforms(100, new Streams(7).house("pace", "H2"))).isNotEqualTo(first);
        assertThat(sampling.uniforms(100, new Streams(7).house("laps", "H1"))).isNotEqualTo(first);
    }

    /** The last cell's last place rounds up to its end where nothing holds it back. */
    @ParameterizedTest
    @EnumSource(Sampling.class)
    void aDrawStaysBelowOneHoweverTheStreamFalls(Sampling sampling) {
        for (int draws : new int[] {1, 3, 256, 100_000}) {
            for (long word : new long[] {-1L, 0L}) {
                assertThat(Arrays.stream(sampling.uniforms(draws, constant(word), 0)))
                        .allMatch(u -> u > 0 && u < 1);
            }
        }
    }

    private static UniformRandomProvider constant(long word) {
        return new UniformRandomProvider() {
            @Override
            public long nextLong() {
                return word;
            }

            @Override
            public int nextInt(int below) {
                return below - 1;
            }
        };
    }

    @Test
    void namesDoNotRunIntoOneAnother() {
        Streams streams = new Streams(1);
        assertThat(streams.opening("p", "ab", "c").nextLong())
                .isNotEqualTo(streams.opening("p", "a", "bc").nextLong());
    }

    @Test
    void stratifiedDrawsFallOneInEachStratum() {
        double[] uniforms = Sampling.STRATIFIED.uniforms(250, new Streams(3).world("w"));
        assertThat(Arrays.stream(uniforms)
                        .mapToInt(u -> (int) (u * 250))
                        .distinct()
                        .count())
                .isEqualTo(250);
    }

    /** Chi-square over 64 cells with a fixed seed; a sound generator would fail it once in 10,000 seeds. */
    @Test
    void plainDrawsAreUniform() {
        long[] counts = new long[64];
        for (double u : Sampling.PLAIN.uniforms(64_000, new Streams(11).world("w"))) {
            assertThat(u).isStrictlyBetween(0.0, 1.0);
            counts[(int) (u * 64)]++;
        }
        double[] expected = new double[64];
        Arrays.fill(expected, 1000);
        assertThat(TestUtils.chiSquareTest(expected, counts)).isGreaterThan(1e-4);
    }

    /** First draws over keys that differ by one letter must be uniform as well: streams do not resemble their neighbours. */
    @Test
    void neighbouringStreamsAreUnlike() {
        long[] counts = new long[32];
        Streams streams = new Streams(5);
        for (int house = 0; house < 32_000; house++) {
            counts[(int) (Sampling.PLAIN.uniforms(1, streams.house("pace", "H" + house))[0] * 32)]++;
        }
        double[] expected = new double[32];
        Arrays.fill(expected, 1000);
        assertThat(TestUtils.chiSquareTest(expected, counts)).isGreaterThan(1e-4);
    }
}
