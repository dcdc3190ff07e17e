package weatherlap.datasets.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.StringLength;

/** What is taken at a glance is what the long way takes, and as it takes it. */
class UsualCellTest {
    private static final List<Column> COLUMNS = List.of(
            Column.key("id", "a key"),
            Column.positive("length", "feet", 90, "a number"),
            Column.anyNumber("any", "", "any number"),
            Column.fraction("share", "a share").optional(),
            Column.whole("count", 0, 12, "a whole number"),
            Column.word("word", List.of("a", "aa", "1e"), "a word"),
            Column.yesNo("yes", "a word").optional(),
            Column.text("text", "free text"));

    @Property(tries = 20_000)
    void isAsTablesHaveItAndSound(
            @ForAll
                    @StringLength(max = 4)
                    @Chars({'"', '\'', ' ', '-', '.', '+', 'e', '0', '1', '9', 'a', '%', '\u00E9'})
                    String raw) {
        for (Column column : COLUMNS) {
            String usual = column.usual(raw);
            if (usual != null) {
                assertThat(usual).isEqualTo(raw).isEqualTo(raw.strip()).isEqualTo(column.plain(raw));
                assertThat(CsvText.content(raw)).contains(raw);
                assertThat(column.fault(raw)).isEmpty();
            }
        }
    }

    @Example
    void mostCellsAreTakenAtAGlance() {
        assertThat(COLUMNS.get(0).usual("H 7")).isEqualTo("H 7");
        assertThat(COLUMNS.get(1).usual("35.5")).isEqualTo("35.5");
        assertThat(COLUMNS.get(3).usual("")).isEmpty();
        assertThat(COLUMNS.get(4).usual("12")).isEqualTo("12");
        assertThat(COLUMNS.get(5).usual("aa")).isEqualTo("aa");
        assertThat(COLUMNS.get(5).usual("AA")).isNull();
    }
}
