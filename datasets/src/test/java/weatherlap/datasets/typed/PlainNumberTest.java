package weatherlap.datasets.typed;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlainNumberTest {
    /** Java's own reading is correctly rounded, by the contract of {@link Double#valueOf(String)}. */
    @Property
    void readsWhatJavaReads(
            @ForAll @LongRange(min = -999_999_999_999_999L, max = 999_999_999_999_999L) long digits,
            @ForAll @IntRange(max = 14) int decimals) {
        String text = BigDecimal.valueOf(digits, decimals).toPlainString();
        double plain = PlainNumber.of(text);
        assertThat(plain).isEqualTo(text.replaceAll("[-.]", "").length() > 15 ? Double.NaN : Double.parseDouble(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-0", "-0.0", "5.", ".5", "-.25", "007", "999999999999999", "0.00000000000001"})
    void edges(String text) {
        assertThat(PlainNumber.of(text)).isEqualTo(Double.parseDouble(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "-", ".", "-.", "1.2.3", "1-2", "+1", "1e3", "NaN", "0x1", "5f", " 1", "1234567890123456"})
    void leavesTheRest(String text) {
        assertThat(PlainNumber.of(text)).isNaN();
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-0", "+7", "007", "123456789012345678", "-999999999999999999"})
    void wholeNumbers(String text) {
        assertThat(PlainNumber.isWhole(text)).isTrue();
        assertThat(Long.parseLong(text)).isBetween(-1_000_000_000_000_000_000L, 1_000_000_000_000_000_000L);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-", "+", "+-1", "1-", "1.0", "1e3", " 1", "\u0663", "1234567890123456789"})
    void noWholeNumbers(String text) {
        assertThat(PlainNumber.isWhole(text)).isFalse();
    }
}
