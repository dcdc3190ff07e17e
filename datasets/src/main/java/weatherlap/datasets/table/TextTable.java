package weatherlap.datasets.table;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tech.tablesaw.api.BooleanColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

/**
 * A table read whole: a Tablesaw table of text, one column for each of the schema, with the physical line of each row and whether the
 * row is sound. Tablesaw keeps each distinct text of a column once.
 */
public final class TextTable {
    private static final String LINE = "line of the file";
    private static final String SOUND = "is sound";

    private final Schema schema;
    private final Table table;
    private final Map<String, Integer> places;

    private final boolean asTyped;

    private TextTable(Schema schema, Table table, boolean asTyped) {
        this.schema = schema;
        this.table = table;
        this.asTyped = asTyped;
        this.places = schema.places();
    }

    /**
     * Reads every row, and reports those that repeat a key; empty where the file is not this table, has no rows, or cannot be read to
     * its end, all of which is reported.
     */
    public static Optional<TextTable> read(Source source, Schema schema, Problems problems) {
        return CsvRows.open(source, schema, problems).flatMap(rows -> {
            try (rows) {
                Table cells = collect(rows, schema);
                TextTable table = new TextTable(schema, cells, rows.isAsTyped());
                if (!rows.checkWhole()) {
                    return Optional.empty();
                }
                table.checkKeys(problems);
                return Optional.of(table);
            }
        });
    }

    private static Table collect(CsvRows rows, Schema schema) {
        List<StringColumn> texts =
                schema.names().stream().map(StringColumn::create).toList();
        IntColumn lines = IntColumn.create(LINE);
        BooleanColumn sound = BooleanColumn.create(SOUND);
        rows.forEachRemaining(row -> {
            texts.forEach(text -> text.append(row.text(text.name())));
            lines.append(row.line());
            sound.append(row.isSound());
        });
        return Table.create(schema.file())
                .addColumns(texts.toArray(StringColumn[]::new))
                .addColumns(lines, sound);
    }

    public Schema schema() {
        return schema;
    }

    /** Whether the file has another separator, other columns, or cells that were read as what their typist meant. */
    public boolean isAsTyped() {
        return asTyped;
    }

    /** The table as a file has it that needs no such reading. */
    public String text() {
        return CsvText.line(schema.names())
                + rows().map(row -> CsvText.line(row.cells())).collect(Collectors.joining());
    }

    public int size() {
        return table.rowCount();
    }

    /** Rows in the order of the file. */
    public Stream<Row> rows() {
        return IntStream.range(0, size()).mapToObj(row());
    }

    /** Makes a row anew each time: a table of millions is not held twice. */
    private IntFunction<Row> row() {
        List<StringColumn> texts =
                schema.names().stream().map(table::stringColumn).toList();
        IntColumn lines = table.intColumn(LINE);
        BooleanColumn sound = table.booleanColumn(SOUND);
        return i -> new Row(
                schema.file(),
                lines.getInt(i),
                places,
                texts.stream().map(text -> text.get(i)).toArray(String[]::new),
                sound.get(i));
    }

    /** Rows whose every cell is as its column wants it. */
    public Stream<Row> soundRows() {
        return rows().filter(Row::isSound);
    }

    private void checkKeys(Problems problems) {
        KeyCheck keys = new KeyCheck(schema, problems);
        rows().forEach(keys::check);
    }
}
