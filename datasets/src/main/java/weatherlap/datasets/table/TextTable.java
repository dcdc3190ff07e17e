package weatherlap.datasets.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntFunction;
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

    private TextTable(Schema schema, Table table) {
        this.schema = schema;
        this.table = table;
        this.places = schema.places();
    }

    /**
     * Reads every row, and reports those that repeat a key; empty where the file is not this table, has no rows, or cannot be read to
     * its end, all of which is reported.
     */
    public static Optional<TextTable> read(Source source, Schema schema, Problems problems) {
        return CsvRows.open(source, schema, problems).flatMap(rows -> {
            try (rows) {
                TextTable table = new TextTable(schema, collect(rows, schema));
                if (rows.isCutShort()) {
                    return Optional.empty();
                }
                if (table.size() == 0) {
                    problems.error(schema.file(), "has a header and no rows");
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

    public int size() {
        return table.rowCount();
    }

    /** Rows in the order of the file. */
    public Stream<Row> rows() {
        return IntStream.range(0, size()).mapToObj(row());
    }

    /** The rows that hold a text in a column, in the order of the file; none for a text that does not occur. */
    public Function<String, List<Row>> rowsBy(String column) {
        StringColumn texts = table.stringColumn(column);
        Map<String, List<Integer>> places = new HashMap<>();
        for (int i = 0; i < size(); i++) {
            places.computeIfAbsent(texts.get(i), text -> new ArrayList<>()).add(i);
        }
        IntFunction<Row> row = row();
        return text ->
                places.getOrDefault(text, List.of()).stream().map(row::apply).toList();
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

    /** A copy of the rows as a Tablesaw table of text. */
    public Table texts() {
        return table.selectColumns(schema.names().toArray(String[]::new)).copy();
    }

    private void checkKeys(Problems problems) {
        KeyCheck keys = new KeyCheck(schema, problems);
        rows().forEach(keys::check);
    }
}
