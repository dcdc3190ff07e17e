package weatherlap.datasets.portfolio;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AscendingTest {
    @ParameterizedTest
    @CsvSource({
        "a b c, true",
        "h1 h2 h10, true",
        "h1 h10 h2, true",
        "h0009 h0010 h10000, true",
        "h2 h10 h11 h9, false",
        "h1 h10 h2 h11, false",
        "a a, false",
        "b a, false",
        "h01 h1, true",
        "h1 h01, false",
    })
    void risesByLettersOrByCount(String names, boolean expected) {
        Ascending order = new Ascending();
        assertThat(Stream.of(names.split(" ")).map(order::takes).reduce(true, (a, b) -> a && b))
                .isEqualTo(expected);
    }
}
