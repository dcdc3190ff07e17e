package weatherlap.datasets.table;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.stream.Stream;

/**
 * A table as data: what checks it also documents it.
 *
 * @param file name of its file
 * @param meaning one line for the documentation
 * @param key names of the columns that together tell rows apart; empty: rows may repeat
 * @param needsRows whether a header alone is a mistake
 */
public record Schema(String file, String meaning, List<Column> columns, List<String> key, boolean needsRows) {
    /** A table that is nothing without rows. */
    public Schema(String file, String meaning, List<Column> columns, List<String> key) {
        this(file, meaning, columns, key, true);
    }

    public Schema {
        columns = List.copyOf(columns);
        key = List.copyOf(key);
        List<String> names = columns.stream().map(Column::name).toList();
        if (new HashSet<>(names).size() < names.size() || !names.containsAll(key)) {
            throw new IllegalArgumentException("The columns of " + file + " must differ and hold its key.");
        }
    }

    /** The same with a column of free text for each of the notes that a file keeps beside the others. */
    Schema withNotes(List<String> notes) {
        return notes.isEmpty()
                ? this
                : new Schema(
                        file,
                        meaning,
                        Stream.concat(columns.stream(), notes.stream().map(note -> Column.text(
                                                note, "a note for the sheets")
                                        .optional()))
                                .toList(),
                        key,
                        needsRows);
    }

    public List<String> names() {
        return columns.stream().map(Column::name).toList();
    }

    /** Place of each column by its name. */
    public HashMap<String, Integer> places() {
        HashMap<String, Integer> places = new HashMap<>();
        columns.forEach(column -> places.put(column.name(), places.size()));
        return places;
    }
}
