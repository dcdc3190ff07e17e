package weatherlap.analysis.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weatherlap.analysis.columns.Column;
import weatherlap.analysis.columns.Schema;

class TableBuilderTest {
    private static final Column ID = new Column("id", "id", Column.Kind.TEXT, "", 0, false, "key");
    private static final Column COUNT = new Column("count", "count", Column.Kind.WHOLE, "", 0, false, "how many");
    private static final Column COST = new Column("cost_usd", "cost", Column.Kind.NUMBER, "USD", 2, false, "cost");
    private static final Column VALUE = new Column("value", "value", Column.Kind.NUMBER, "", 2, true, "value");
    private static final Schema SCHEMA = new Schema("t.csv", "T", "a row", List.of(ID, COUNT, COST, VALUE));

    @Test
    void keepsWhatItIsGiven() {
        ResultTable table = new TableBuilder(SCHEMA)
                .row("a", 2, 1.005, OptionalDouble.empty())
                .row("b", 0, -0.5, OptionalDouble.of(3))
                .build();
        assertThat(table.rows()).isEqualTo(2);
        assertThat(table.text(1, "id")).isEqualTo("b");
        assertThat(table.number(0, COUNT)).hasValue(2);
        assertThat(table.number(0, COST)).hasValue(1.005);
        assertThat(table.number(0, VALUE)).isEmpty();
        assertThat(table.number(1, VALUE)).hasValue(3);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesWhatIsNoNumber(double cost) {
        TableBuilder table = new TableBuilder(SCHEMA).row("a", 1, 1.0, OptionalDouble.empty());
        assertThatThrownBy(() -> table.row("a", 1, cost, OptionalDouble.empty()))
                .hasMessageStartingWith("The cost_usd (" + cost + ") of row 2 of t.csv");
        assertThatThrownBy(() -> new TableBuilder(SCHEMA).row("a", 1, 1.0, OptionalDouble.of(cost)))
                .hasMessageContaining("value");
    }

    @Test
    void refusesARowThatDoesNotFit() {
        assertThatThrownBy(() -> new TableBuilder(SCHEMA).row("a", 1)).hasMessageContaining("4 columns");
        assertThatThrownBy(() -> new TableBuilder(SCHEMA).row("", 1, 1.0, OptionalDouble.empty()))
                .hasMessageContaining("id");
        assertThatThrownBy(() -> new TableBuilder(SCHEMA).row("a", 1.0, 1.0, OptionalDouble.empty()))
                .hasMessageContaining("count");
    }

    @Test
    void aSchemaNamesEachColumnOnce() {
        assertThatThrownBy(() -> new Schema("t.csv", "T", "a row", List.of(ID, ID)))
                .hasMessageContaining("twice");
    }
}
