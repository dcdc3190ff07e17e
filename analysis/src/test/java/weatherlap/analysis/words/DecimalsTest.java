package weatherlap.analysis.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalsTest {
    @ParameterizedTest
    @CsvSource({
        "1.005, 2, 1.01", // as written in decimal, not as the binary neighbour 1.00499…
        "-2.5, 0, -3",
        "-0.001, 2, 0.00",
        "1e20, 1, 100000000000000000000.0",
        "1e-20, 3, 0.000"
    })
    void roundsOnceHalfAwayFromZero(double value, int decimals, String text) {
        assertThat(Decimals.fixed(value, decimals)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"0.1, 0.1", "-0.0, 0", "1e21, 1000000000000000000000", "12.50, 12.5"})
    void plainTextReadsBackAsTheSameNumber(double value, String text) {
        assertThat(Decimals.plain(value)).isEqualTo(text);
        assertThat(Double.parseDouble(text) == value).isTrue();
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesWhatIsNoNumber(double value) {
        assertThatThrownBy(() -> Decimals.fixed(value, 2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Decimals.plain(value)).isInstanceOf(IllegalArgumentException.class);
    }
}
