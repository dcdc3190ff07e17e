package weatherlap.analysis.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** The quick way to write a number writes what the exact way does, ties and zeros too. */
class DecimalsPropertyTest {
    @Property(tries = 20_000)
    void appendsWhatIsExact(
            @ForAll @DoubleRange(min = -1e12, max = 1e12) double value, @ForAll @IntRange(max = 8) int decimals) {
        same(value, decimals);
    }

    @Property(tries = 5_000)
    void alsoNextToTies(@ForAll @IntRange(min = -1_000_000, max = 1_000_000) int halves) {
        for (int decimals = 0; decimals <= 4; decimals++) {
            double tie = halves / 2.0 / Math.pow(10, decimals);
            same(tie, decimals);
            same(Math.nextUp(tie), decimals);
            same(Math.nextDown(tie), decimals);
        }
    }

    /** Among them the ties that are so in binary too. */
    @Property(tries = 5_000)
    void alsoBinaryFractions(
            @ForAll @LongRange(min = -5_000_000_000L, max = 5_000_000_000L) long whole,
            @ForAll @IntRange(max = 12) int halvings) {
        for (int decimals = 0; decimals <= 7; decimals++) {
            same(Math.scalb((double) whole, -halvings), decimals);
        }
    }

    /** Against the formatter of the JDK. */
    @Property(tries = 5_000)
    void thousandsStandApartAsTheFormatterHasThem(
            @ForAll @DoubleRange(min = 0, max = 1e12) double value, @ForAll @IntRange(max = 4) int decimals) {
        assertThat(Numbers.plain(value, decimals)).isEqualTo(String.format(Locale.ROOT, "%,." + decimals + "f", value));
    }

    private static void same(double value, int decimals) {
        assertThat(Decimals.fixed(value, decimals))
                .isEqualTo(Decimals.rounded(value, decimals).toPlainString());
    }
}
