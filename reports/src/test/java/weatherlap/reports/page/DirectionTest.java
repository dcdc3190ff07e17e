package weatherlap.reports.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Unicode Standard Annex 9, rule P2: the first letter with a direction decides; digits and signs have none of their own. */
class DirectionTest {
    @Test
    void theFirstLetterDecides() {
        assertThat(Direction.of("12 \u05D1\u05D9\u05EA (3)")).isEqualTo("rtl");
        assertThat(Direction.of("\u0628\u064A\u062A A")).isEqualTo("rtl");
        assertThat(Direction.of("A \u0628\u064A\u062A")).isNull();
        assertThat(Direction.of("\u77F3\u306E\u5BB6")).isNull();
        assertThat(Direction.of("12 %")).isNull();
        assertThat(Direction.of("")).isNull();
    }

    @Test
    void rowsHaveNamesOfTheirOwn() {
        assertThat(Anchor.of("a.csv", "b c")).matches("[A-Za-z0-9-]+").isNotEqualTo(Anchor.of("a.csv", "b-c"));
        assertThat(Anchor.of("a.csv", "\u05D1")).matches("[A-Za-z0-9-]+").isNotEqualTo(Anchor.of("a.csv", "\u05D2"));
    }
}
