package weatherlap.datasets.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weatherlap.datasets.assumptions.AssumptionTables;
import weatherlap.sim.explain.Basis;

/** Tables as spreadsheets and people leave them. */
class TypedTableTest {
    private static final Schema WINDOWS = new Schema(
            "windows.csv",
            "",
            List.of(
                    Column.key("window_id", ""),
                    Column.number("width_in", "inches", 8, 144, ""),
                    Column.text("say", "").optional()),
            List.of("window_id"));

    private final Problems problems = new Problems();

    private List<Row> rows(String text) {
        return TextTable.read(Source.of("windows.csv", text), WINDOWS, problems)
                .map(table -> table.rows().toList())
                .orElse(List.of());
    }

    @Test
    void theHeaderShowsWhatSeparates() {
        List<List<String>> read = Stream.of(",", ";", "\t", "|")
                .map(mark -> "Window ID#Width_in#say\nW1#35 1/2\"#\"a;b\tc|d,e\"\nW2#6'#\n".replace("#", mark))
                .map(this::rows)
                .map(rows -> rows.stream()
                        .map(row -> row.text("window_id") + "=" + row.text("width_in") + row.text("say"))
                        .toList())
                .toList();
        assertThat(problems.errors()).isEmpty();
        assertThat(read).hasSize(4).containsOnly(List.of("W1=35.5a;b\tc|d,e", "W2=72"));
    }

    /** The line with which spreadsheets tell each other what separates; rows keep their lines. */
    @Test
    void aLineThatNamesTheSeparatorIsNoHeader() {
        List<Row> rows = rows("sep=;\nwindow_id;width_in\nW1;36\n");
        assertThat(problems.errors()).isEmpty();
        assertThat(rows).singleElement().satisfies(row -> {
            assertThat(row.line()).isEqualTo(3);
            assertThat(row.number("width_in")).isEqualTo(36);
        });
    }

    @Test
    void betweenSemicolonsACommaMayBeTheMarkOfDecimals() {
        rows("window_id;width_in\nW1;35,5\nW2;1,250\n");
        assertThat(problems.errors().stream().map(Problem::toString))
                .containsExactly(
                        "windows.csv:2:width_in: \"35,5\" is not a number (inches, 8 to 144); write decimals with a"
                                + " point",
                        "windows.csv:3:width_in: \"1,250\" is not a number (inches, 8 to 144); write it without separators"
                                + " between thousands");
    }

    @Test
    void notesAreKeptAndOthersNamedInOneLine() {
        Problems heard = new Problems();
        try (CsvRows rows = CsvRows.open(
                        Source.of("windows.csv", "window_id,tag,width_in,Note color,tag\nW1,7,36,white,8\n"),
                        WINDOWS,
                        heard)
                .orElseThrow()) {
            assertThat(rows.next().filled(Headings.NOTE)).containsExactly(Map.entry("note_color", "white"));
        }
        assertThat(heard.errors()).isEmpty();
        assertThat(heard.warnings().stream().map(Problem::toString))
                .containsExactly("windows.csv:1: the column \"tag\" does not belong to this table and was not read");
    }

    /** Own words for a basis, shares in percent, dollars, semicolons and a column more: what is kept of it reads the same, plainly. */
    @Test
    void assumptionsAsTypedAreKeptAsTheyWereRead(@TempDir Path folder) throws IOException {
        AssumptionTables bundled = AssumptionTables.bundled();
        String wages = "region;role;usd_per_hour;burden_fraction;basis;source;=cmd\n"
                + "national;carpenter;$34.00;30%;what I pay;;=1+1\nnational;helper;22;0.3;Invented;;\n";
        for (Map.Entry<String, String> table : bundled.texts().entrySet()) {
            Files.writeString(folder.resolve(table.getKey()), table.getValue());
        }
        Files.writeString(folder.resolve("wages.csv"), wages);
        AssumptionTables read = AssumptionTables.read(folder).orElseThrow();
        assertThat(read.texts().get("wages.csv"))
                .isEqualTo("region,role,usd_per_hour,burden_fraction,price_year,basis,source\n"
                        + "national,carpenter,34.00,0.30,,what I pay,\nnational,helper,22,0.3,,invented,\n");
        assertThat(read.assumptions().wages().get(0).origin().basis()).isEqualTo(Basis.OWN_FIGURE);
        assertThat(read.assumptions().wages().get(0).origin().source()).isEqualTo("what I pay");
        bundled.texts().keySet().stream()
                .filter(file -> !file.equals("wages.csv"))
                .forEach(file -> assertThat(read.texts())
                        .containsEntry(file, bundled.texts().get(file)));
    }
}
