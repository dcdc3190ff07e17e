package weatherlap.analysis.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weatherlap.analysis.columns.Layout;

class ResultTableTest {
    private record Job(String id, int count, double costUsd, OptionalDouble value) {}

    private static final Layout<Job> LAYOUT = Layout.<Job>of("t.csv", "T", "a row")
            .text("id", "id", "key", Job::id)
            .whole("count", "count", "how many", Job::count)
            .number("cost_usd", "cost", "USD", 2, "cost", Job::costUsd)
            .optionalNumber("value", "value", "", 2, "value", Job::value)
            .build();

    private static final Job GOOD = new Job("a", 2, 1.005, OptionalDouble.empty());

    @Test
    void eachColumnTakesItsOwn() {
        ResultTable table = ResultTable.of(LAYOUT, List.of(GOOD, new Job("b", 0, -0.5, OptionalDouble.of(3))));
        assertThat(table.rows()).isEqualTo(2);
        assertThat(table.text(1, "id")).isEqualTo("b");
        assertThat(table.number(0, LAYOUT.column("count"))).hasValue(2);
        assertThat(table.number(0, LAYOUT.column("cost_usd"))).hasValue(1.005);
        assertThat(table.number(0, LAYOUT.column("value"))).isEmpty();
        assertThat(table.number(1, LAYOUT.column("value"))).hasValue(3);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesWhatIsNoNumber(double cost) {
        Job bad = new Job("a", 1, cost, OptionalDouble.empty());
        assertThatThrownBy(() -> ResultTable.of(LAYOUT, List.of(GOOD, bad)))
                .hasMessageStartingWith("t.csv: The cost_usd (" + cost + ") of row 2");
        Job badValue = new Job("a", 1, 1.0, OptionalDouble.of(cost));
        assertThatThrownBy(() -> ResultTable.of(LAYOUT, List.of(badValue))).hasMessageContaining("value");
    }

    @Test
    void refusesAnEmptyTextWhereOneIsWanted() {
        Job bad = new Job("", 1, 1.0, OptionalDouble.empty());
        assertThatThrownBy(() -> ResultTable.of(LAYOUT, List.of(bad))).hasMessageContaining("id");
    }

    @Test
    void aLayoutNamesEachColumnOnce() {
        assertThatThrownBy(() -> Layout.<Job>of("t.csv", "T", "a row")
                        .text("id", "id", "key", Job::id)
                        .text("id", "id", "key", Job::id)
                        .build())
                .hasMessageContaining("twice");
    }
}
