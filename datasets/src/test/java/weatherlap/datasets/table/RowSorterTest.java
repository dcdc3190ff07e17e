package weatherlap.datasets.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weatherlap.datasets.sorting.RowSorter;
import weatherlap.datasets.sorting.Scratch;

/** Rows come back in order and otherwise as they were, in however many parts they were set aside. */
class RowSorterTest {
    private static final Schema SCHEMA = new Schema(
            "paints.csv",
            "one row a paint",
            List.of(
                    Column.text("name", "sorted by"),
                    Column.number("price_usd", "USD", 0, 100, "of a can"),
                    Column.text("note", "anything").optional()),
            List.of());

    private final Problems problems = new Problems();
    private final CountedScratch scratch = new CountedScratch();

    @ParameterizedTest
    @CsvSource({
        "1000000, 2, 0", // all in one run: nothing is set aside
        "10000, 100, 16", // runs of 48 rows, all merged at once
        "10000, 3, 23", // 16 runs three at a time: 14, 12, 10, 8, 6, 4, 2 parts are left
        "1, 2, 1498", // every row a run of its own
    })
    void anyRunsAndMergesGiveTheSameOrder(long runBytes, int mostMerged, int parts) {
        try (CsvRows rows = open(shuffled(750))) {
            List<String> expected = lines(shuffled(750)).stream()
                    .sorted(Comparator.comparing((Line line) -> line.name()).thenComparingInt(Line::number))
                    .map(line -> line.number() + " " + line.name())
                    .toList();
            try (Rows sorted = sorter(scratch, runBytes, mostMerged).sorted(rows)) {
                List<String> actual = new ArrayList<>();
                sorted.forEachRemaining(row -> actual.add(row.line() + " " + row.text("name")));
                assertThat(actual).isEqualTo(expected);
            }
            assertThat(scratch.begun()).isEqualTo(parts);
            assertThat(scratch.kept()).isZero();
        }
    }

    @Test
    void cellsWithQuotesAndLineBreaksAndRowsThatAreNotSoundComeBackAsTheyWere() {
        String text = "\uFEFFname,note,price_usd\r\nb,\"two\r\nlines, \"\"quoted\"\"\",1\r\n\r\n"
                + "c,\u00fcn\u0131c\u00f6de \uD83C\uDFE0,x\r\na,,3\r\n";
        List<Row> plain = new ArrayList<>();
        try (CsvRows rows = open(text)) {
            rows.forEachRemaining(plain::add);
        }
        assertThat(problems.errors()).hasSize(1);
        try (CsvRows rows = open(text);
                Rows sorted = sorter(scratch, 1, 2).sorted(rows)) {
            for (int place : new int[] {2, 0, 1}) {
                assertThat(sorted.next()).usingRecursiveComparison().isEqualTo(plain.get(place));
            }
            assertThat(sorted.hasNext()).isFalse();
        }
        assertThat(plain).extracting(Row::line).containsExactly(2, 5, 6);
        assertThat(plain.get(0).text("note")).isEqualTo("two\nlines, \"quoted\"");
    }

    @Test
    void theLongestCellsFitIntoAPart() {
        String longest = "\uFFEE".repeat(19_990);
        try (CsvRows rows = open("name,price_usd,note\nb,1,x\na,1," + longest + "\n");
                Rows sorted = sorter(scratch, 1, 2).sorted(rows)) {
            assertThat(sorted.next().text("note")).isEqualTo(longest);
        }
        assertThat(scratch.begun()).isEqualTo(2);
    }

    @Test
    void aFullDiskIsSaid() {
        try (CsvRows rows = open(shuffled(100))) {
            RowSorter sorter = sorter(new CountedScratch(3), 1, 2);
            assertThatThrownBy(() -> sorter.sorted(rows))
                    .isInstanceOf(UncheckedIOException.class)
                    .hasMessageContaining("No space left");
        }
    }

    private record Line(int number, String name) {}

    /** Names of which many are the same. */
    private static String shuffled(int rows) {
        SplittableRandom random = new SplittableRandom(rows);
        StringBuilder text = new StringBuilder("name,price_usd,note\n");
        for (int i = 0; i < rows; i++) {
            text.append("paint").append(random.nextInt(rows / 3)).append(",1,\n");
        }
        return text.toString();
    }

    private static List<Line> lines(String text) {
        List<Line> lines = new ArrayList<>();
        text.lines().skip(1).forEach(line -> lines.add(new Line(lines.size() + 2, line.split(",")[0])));
        return lines;
    }

    private CsvRows open(String text) {
        return CsvRows.open(Source.of("paints.csv", text), SCHEMA, problems).orElseThrow();
    }

    private static RowSorter sorter(Scratch scratch, long runBytes, int mostMerged) {
        return new RowSorter(
                SCHEMA,
                row -> row.text("name"),
                Comparator.naturalOrder(),
                scratch,
                new RowSorter.Limits(runBytes, mostMerged));
    }
}
