package weatherlap.analysis.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import weatherlap.analysis.columns.Layout;
import weatherlap.analysis.columns.ResultColumn;
import weatherlap.analysis.columns.ResultColumn.Kind;
import weatherlap.analysis.tables.HouseTable;
import weatherlap.analysis.tables.OpeningTable;

class CatalogueTest {
    /** What a name ends in, and the unit it stands for. */
    private static final Map<String, String> UNITS =
            Map.of("_ft2", "ft²", "_in", "in.", "_pct", "%", "_usd", "USD", "_l_per_m2", "L/m²", "_deg", "°");

    static List<Layout<?>> layouts() {
        return Catalogue.ALL;
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void theUnitOfANameIsTheUnitOfItsColumn(Layout<?> layout) {
        for (ResultColumn<?> column : layout.columns()) {
            UNITS.forEach((ending, unit) -> {
                if (column.name().endsWith(ending) && !column.name().contains("_per_crew_day")) {
                    assertThat(column.unit()).as(column.name()).isEqualTo(unit);
                }
            });
        }
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void textsHaveNoUnitAndNumbersWithAUnitHaveDecimals(Layout<?> layout) {
        assertThat(layout.columns()).allSatisfy(column -> {
            if (column.kind() != Kind.NUMBER) {
                assertThat(column.decimals()).isZero();
                assertThat(column.unit()).isEmpty();
            }
        });
        assertThat(layout.columns().get(0).mayBeEmpty()).isFalse();
    }

    @Test
    void fileNamesAndSheetTitlesAreTheirOwn() {
        assertThat(layouts()).extracting(Layout::file).doesNotHaveDuplicates();
        assertThat(layouts()).extracting(Layout::title).doesNotHaveDuplicates();
    }

    @Test
    void spreadsHaveTheFourPoints() {
        assertThat(HouseTable.LAYOUT.names())
                .containsSubsequence(
                        "cost_usd_mean", "cost_usd_p10", "cost_usd_p50", "cost_usd_p90", "leak_probability")
                .hasSize(40);
        assertThat(OpeningTable.LAYOUT.names()).hasSize(31);
    }
}
