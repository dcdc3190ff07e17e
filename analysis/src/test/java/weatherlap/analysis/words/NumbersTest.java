package weatherlap.analysis.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class NumbersTest {

    @Test
    void thousandsStandApartAndTheMinusIsTrue() {
        assertThat(Numbers.plain(1234567.891, 1)).isEqualTo("1,234,567.9");
        assertThat(Numbers.plain(-12.5, 1)).isEqualTo("\u221212.5");
        assertThat(Numbers.usd(-1234.4)).isEqualTo("\u2212$1,234");
        assertThat(Numbers.signedUsd(250)).isEqualTo("+$250");
        assertThat(Numbers.percent(0.2431, 1)).isEqualTo("24.3%");
    }

    @Test
    void zeroHasNoSign() {
        assertThat(Numbers.plain(-0.04, 1)).isEqualTo("0.0");
        assertThat(Numbers.signed(0.04, 1)).isEqualTo("0.0");
        assertThat(Numbers.signedUsd(-0.3)).isEqualTo("$0");
    }

    @Test
    void greatSumsAreInMillions() {
        assertThat(Numbers.usd(12_345_678)).isEqualTo("$12.3M");
        assertThat(Numbers.usd(9_999_999)).isEqualTo("$9,999,999");
    }

    @Test
    void whatIsNoNumberIsADash() {
        assertThat(Numbers.usd(Double.NaN)).isEqualTo("\u2013");
        assertThat(Numbers.percent(Double.POSITIVE_INFINITY, 1)).isEqualTo("\u2013");
    }

    @Test
    void theLocaleOfTheMachineDoesNotMatter() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertThat(Numbers.plain(1234.5, 1)).isEqualTo("1,234.5");
        } finally {
            Locale.setDefault(before);
        }
    }
}
