package weatherlap.datasets.portfolio;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
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
        "a a, true",
        "b a, false",
        "h01 h1, true",
        "h1 h01, false",
        "h99999999999999999998 h99999999999999999999, true",
    })
    void risesByLettersOrByCount(String names, boolean expected) {
        Ascending order = new Ascending();
        Stream.of(names.split(" ")).forEach(order::take);
        assertThat(order.order().isPresent()).isEqualTo(expected);
    }

    @Test
    void tablesRiseInTheSameWay() {
        Ascending order = new Ascending();
        List.of("h1", "h2", "h10").forEach(order::take);
        order.restart();
        List.of("h1", "h2").forEach(order::take);
        assertThat(order.order()).contains(Ascending.BY_COUNT);
        order.restart();
        List.of("h10", "h2").forEach(order::take);
        assertThat(order.order()).isEmpty();
    }
}
