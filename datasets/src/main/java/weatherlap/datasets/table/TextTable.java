package weatherlap.datasets.table;

import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tech.tablesaw.api.BooleanColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;

/**
 * A table read whole: a Tablesaw column of text for each column of the schema, with the physical line of each row and whether the row is
 * sound. Tablesaw keeps each distinct text of a column once. (Its own table of columns would look through all classes of the program for
 * readers and writers first, which takes a tenth of a short run.)
 */
public final class TextTable {
    private static final String LINE = "line of the file";
    private static final String SOUND = "is sound";

    private final Schema schema;
    private final List<StringColumn> texts;
    private final IntColumn lines = IntColumn.create(LINE);
    private final BooleanColumn sound = BooleanColumn.create(SOUND);
    private final HashMap<String, Integer> places;
    private final boolean asTyped;

    private TextTable(CsvRows rows, Schema schema) {
        this.schema = schema;
        this.places = schema.places();
        this.texts = schema.names().stream().map(StringColumn::create).toList();
        rows.forEachRemaining(row -> {
            texts.forEach(text -> text.append(row.text(text.name())));
            lines.append(row.line());
            sound.append(row.isSound());
        });
        this.asTyped = rows.isAsTyped();
    }

    /**
     * Reads every row, and reports those that repeat a key; empty where the file is not this table, has no rows, or cannot be read to
     * its end, all of which is reported.
     */
    public static Optional<TextTable> read(Source source, Schema schema, Problems problems) {
        return CsvRows.open(source, schema, problems).flatMap(rows -> {
            try (rows) {
                TextTable table = new TextTable(rows, schema);
                if (!rows.checkWhole()) {
                    return Optional.empty();
                }
                table.checkKeys(problems);
                return Optional.of(table);
            }
        });
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
        return lines.size();
    }

    /** Rows in the order of the file. */
    public Stream<Row> rows() {
        return IntStream.range(0, size()).mapToObj(this::row);
    }

    /** Made anew each time: a table of millions is not held twice. */
    private Row row(int i) {
        return new Row(
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
