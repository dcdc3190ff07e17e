package weatherlap.datasets.shortform;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weatherlap.datasets.table.Column;
import weatherlap.datasets.table.Folder;
import weatherlap.datasets.table.Loaded;
import weatherlap.datasets.table.Problems;
import weatherlap.datasets.table.Row;
import weatherlap.datasets.table.Schema;
import weatherlap.sim.explain.Basis;

/** What is taken of a house where nobody measured it, column by column; each row with its basis and how far it may be off. */
public final class HouseDefaults {
    public static final Schema SCHEMA = new Schema(
            "house-defaults.csv",
            "what is taken of a house where the short table leaves it out",
            List.of(
                    Column.text("column", "of a table of houses, walls or windows; or gap_in"),
                    Column.text("given", "such as storeys=1; empty: always").optional(),
                    Column.text("value", "what is taken"),
                    Column.text("least", "one end of what it may be, as the column has it"),
                    Column.text("most", "the other end"),
                    Column.word("basis", Basis.words(), "how far the row can be trusted"),
                    Column.text("source", "citation").optional()),
            List.of("column", "given"));

    /** Where in its range a default is taken. */
    public enum End {
        VALUE,
        LEAST,
        MOST
    }

    /**
     * One row.
     *
     * @param given a column and what it holds, with an equals sign between; empty: always
     */
    public record Default(
            String column, String given, String value, String least, String most, Basis basis, String source) {
        private boolean holds(Map<String, String> facts) {
            String[] term = given.split("=", 2);
            return given.isEmpty() || term[1].equals(facts.get(term[0]));
        }

        String at(End end) {
            return switch (end) {
                case VALUE -> value;
                case LEAST -> least;
                case MOST -> most;
            };
        }

        /** The same, taken at an end. */
        Default moved(End end) {
            return new Default(column, given, at(end), least, most, basis, source);
        }
    }

    private final List<Default> rows;

    private HouseDefaults(List<Default> rows) {
        this.rows = List.copyOf(rows);
    }

    /** Those that come with the program. */
    public static HouseDefaults bundled() {
        Problems problems = new Problems();
        Optional<HouseDefaults> read = Folder.beside(HouseDefaults.class)
                .table(SCHEMA, problems)
                .map(table -> new HouseDefaults(
                        table.soundRows().map(HouseDefaults::row).toList()));
        return Loaded.of(read, problems).orElseThrow();
    }

    private static Default row(Row row) {
        return new Default(
                row.text("column"),
                row.text("given"),
                row.text("value"),
                row.text("least"),
                row.text("most"),
                row.word("basis", Basis.class),
                row.text("source"));
    }

    public List<Default> rows() {
        return rows;
    }

    /** The same with the rows of one column taken at an end of their range. */
    public HouseDefaults with(String column, End end) {
        List<Default> moved = new ArrayList<>();
        rows.forEach(row -> moved.add(row.column().equals(column) ? row.moved(end) : row));
        return new HouseDefaults(moved);
    }

    /** What is taken for a column, given what is known of the house; empty: nothing is. */
    Optional<Default> of(String column, Map<String, String> facts) {
        return rows.stream()
                .filter(row -> row.column().equals(column) && row.holds(facts))
                .findFirst();
    }
}
