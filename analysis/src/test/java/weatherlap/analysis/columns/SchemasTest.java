package weatherlap.analysis.columns;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import weatherlap.analysis.columns.Column.Kind;

class SchemasTest {
    /** What a name ends in, and the unit it stands for. */
    private static final Map<String, String> UNITS =
            Map.of("_ft2", "ft²", "_in", "in.", "_pct", "%", "_usd", "USD", "_l_per_m2", "L/m²", "_deg", "°");

    static Stream<Schema> schemas() {
        return ColumnsInReadmeTest.schemas();
    }

    @ParameterizedTest
    @MethodSource("schemas")
    void theUnitOfANameIsTheUnitOfItsColumn(Schema schema) {
        for (Column column : schema.columns()) {
            UNITS.forEach((ending, unit) -> {
                if (column.name().endsWith(ending) && !column.name().contains("_per_crew_day")) {
                    assertThat(column.unit()).as(column.name()).isEqualTo(unit);
                }
            });
        }
    }

    @ParameterizedTest
    @MethodSource("schemas")
    void textsHaveNoUnitAndNumbersWithAUnitHaveDecimals(Schema schema) {
        assertThat(schema.columns()).allSatisfy(column -> {
            if (column.kind() != Kind.NUMBER) {
                assertThat(column.decimals()).isZero();
                assertThat(column.unit()).isEmpty();
            }
        });
        assertThat(schema.columns().get(0).mayBeEmpty()).isFalse();
    }

    @Test
    void fileNamesAndSheetTitlesAreTheirOwn() {
        assertThat(schemas()).extracting(Schema::file).doesNotHaveDuplicates();
        assertThat(schemas()).extracting(Schema::title).doesNotHaveDuplicates();
    }

    @Test
    void spreadsHaveTheFourPoints() {
        assertThat(Schemas.HOUSES.names())
                .containsSubsequence(
                        "cost_usd_mean", "cost_usd_p10", "cost_usd_p50", "cost_usd_p90", "leak_probability")
                .hasSize(35);
        assertThat(Schemas.OPENINGS.names()).hasSize(30);
    }
}
