package weatherlap.datasets.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TextTableTest {
    private static final Schema SCHEMA = new Schema(
            "paints.csv",
            "one row a paint",
            List.of(
                    Column.key("name", "key"),
                    Column.number("price_usd", "USD", 0, 100, "of a can"),
                    Column.text("note", "anything").optional()),
            List.of("name"));

    private final Problems problems = new Problems();

    @Test
    void cellsComeWithoutQuotesAndBlanks() {
        TextTable table = read("price_usd,name,note\n 2.50 , ochre,\"a \"\"dark\"\" one,\nslow to dry\"\n");
        Row row = table.rows().findFirst().orElseThrow();
        assertThat(row.text("name")).isEqualTo("ochre");
        assertThat(row.number("price_usd")).isEqualTo(2.5);
        assertThat(row.text("note")).isEqualTo("a \"dark\" one,\nslow to dry");
    }

    @Test
    void rowsCarryThePhysicalLineOnWhichTheyBegin() {
        TextTable table = read("name,price_usd,note\n\na,1,\"two\nlines\"\n\n\nb,2,\nc,3,\n");
        assertThat(table.rows().map(Row::line)).containsExactly(3, 7, 8);
    }

    @Test
    void aByteOrderMarkAndAnyLineEndAreTolerated() {
        TextTable table = read("\uFEFFname,price_usd,note\r\na,1,\rb,2,\n");
        assertThat(table.rows().map(row -> row.text("name") + row.line())).containsExactly("a2", "b3");
    }

    @Test
    void aColumnThatMayBeEmptyMayBeLeftOut() {
        assertThat(read("name,price_usd\na,1\n").rows().map(row -> row.has("note")))
                .containsExactly(false);
    }

    @Test
    void unsoundRowsAreKeptForTheirKeysAndMarked() {
        Optional<TextTable> table =
                TextTable.read(Source.of("paints.csv", "name,price_usd\na,x\nb,2\n"), SCHEMA, problems);
        assertThat(table.orElseThrow().rows().map(row -> row.text("name"))).containsExactly("a", "b");
        assertThat(table.orElseThrow().soundRows().map(row -> row.text("name"))).containsExactly("b");
    }

    @Test
    void whatIsWrittenReadsBack() {
        String awkward = " a, \"b\"\nc ";
        String text = CsvText.line("name", "price_usd", "note") + CsvText.line("a", CsvText.cell(0.1), awkward);
        Row row = read(text).rows().findFirst().orElseThrow();
        assertThat(row.text("note")).isEqualTo(awkward.strip());
        assertThat(row.number("price_usd")).isEqualTo(0.1);
    }

    @Test
    void noMoreProblemsAreKeptThanSomeoneCouldRead() {
        String rows = "a,x\n".repeat(Problems.KEPT);
        TextTable.read(Source.of("paints.csv", "name,price_usd\n" + rows), SCHEMA, problems);
        assertThat(problems.errors()).hasSize(Problems.KEPT + 1);
        assertThat(problems.errors().get(Problems.KEPT).message()).startsWith("and 9999 more");
    }

    private TextTable read(String text) {
        Optional<TextTable> table = TextTable.read(Source.of("paints.csv", text), SCHEMA, problems);
        assertThat(problems.errors()).isEmpty();
        return table.orElseThrow();
    }
}
