package weatherlap.datasets.table;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.StringJoiner;
import java.util.TreeMap;
import weatherlap.datasets.typed.PlainNumber;

/**
 * One row of a table whose cells have been held against their columns. Ask a row for values only where it {@link #isSound()}, or for
 * columns that cannot be wrong.
 */
public final class Row {
    /** Constants by their words, as most cells have them. */
    private static final ClassValue<Map<String, Enum<?>>> WORDS = new ClassValue<>() {
        @Override
        protected Map<String, Enum<?>> computeValue(Class<?> type) {
            Map<String, Enum<?>> words = new HashMap<>();
            for (Object constant : type.getEnumConstants()) {
                words.put(CsvText.cell((Enum<?>) constant), (Enum<?>) constant);
            }
            return words;
        }
    };

    private final String file;
    private final int line;
    /** Asked hundreds of times a house. */
    private final HashMap<String, Integer> places;

    private final String[] cells;
    private final boolean sound;

    /** @param cells one for each column of the schema, in its order; empty text where the file leaves the column out */
    public Row(String file, int line, HashMap<String, Integer> places, String[] cells, boolean sound) {
        this.file = file;
        this.line = line;
        this.places = places;
        this.cells = cells;
        this.sound = sound;
    }

    public String file() {
        return file;
    }

    /** Physical line on which the row begins, from 1. */
    public int line() {
        return line;
    }

    /** Whether every cell is as its column wants it. */
    public boolean isSound() {
        return sound;
    }

    public boolean has(String column) {
        return !text(column).isEmpty();
    }

    /** The cell as text, without blanks around it. */
    public String text(String column) {
        return cells[place(column)];
    }

    private int place(String column) {
        Integer place = places.get(column);
        if (place == null) {
            throw new IllegalArgumentException(file + " has no column " + column);
        }
        return place;
    }

    /** One for each column of the schema, in its order. */
    public List<String> cells() {
        return List.of(cells);
    }

    /** The cells that are not empty of columns whose names begin so, in the order of the names. */
    public SortedMap<String, String> filled(String prefix) {
        SortedMap<String, String> filled = new TreeMap<>();
        places.forEach((name, place) -> {
            if (name.startsWith(prefix) && !cells[place].isEmpty()) {
                filled.put(name, cells[place]);
            }
        });
        return filled;
    }

    /** Whether there are columns beside those of a schema. */
    public boolean hasMoreThan(Schema schema) {
        return cells.length > schema.columns().size();
    }

    /** What tells the row apart: the cells of the key, with slashes between them. */
    public String key(Schema schema) {
        StringJoiner key = new StringJoiner("/");
        for (String column : schema.key()) {
            key.add(text(column));
        }
        return key.toString();
    }

    /** The cells that are not empty, by column. */
    public Map<String, String> filled(Schema schema) {
        Map<String, String> cells = new LinkedHashMap<>();
        schema.names().stream().filter(this::has).forEach(column -> cells.put(column, text(column)));
        return cells;
    }

    /** About how many bytes of memory the row takes. */
    public long bytes() {
        long bytes = 64;
        for (String cell : cells) {
            bytes += cell.isEmpty() ? 8 : 64 + cell.length();
        }
        return bytes;
    }

    public double number(String column) {
        return read(text(column));
    }

    private static double read(String cell) {
        double plain = PlainNumber.of(cell);
        return Double.isNaN(plain) ? Double.parseDouble(cell) : plain;
    }

    public OptionalDouble optionalNumber(String column) {
        String cell = text(column);
        return cell.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(read(cell));
    }

    public double number(String column, double whenEmpty) {
        String cell = text(column);
        return cell.isEmpty() ? whenEmpty : read(cell);
    }

    public int whole(String column) {
        return Integer.parseInt(text(column));
    }

    public int whole(String column, int whenEmpty) {
        return has(column) ? whole(column) : whenEmpty;
    }

    public boolean yes(String column) {
        return text(column).equals("yes");
    }

    public <E extends Enum<E>> E word(String column, Class<E> type) {
        return constant(text(column), type);
    }

    private static <E extends Enum<E>> E constant(String text, Class<E> type) {
        Enum<?> known = WORDS.get(type).get(text);
        return known != null
                ? type.cast(known)
                : Enum.valueOf(type, text.toUpperCase(Locale.ROOT).replace(' ', '_'));
    }

    public <E extends Enum<E>> E word(String column, Class<E> type, E whenEmpty) {
        String text = text(column);
        return text.isEmpty() ? whenEmpty : constant(text, type);
    }

    /** Reports an error at a cell of this row. */
    public void error(Problems problems, String column, String message) {
        problems.error(file, line, column, message);
    }

    /** Reports a warning at a cell of this row. */
    public void warning(Problems problems, String column, String message) {
        problems.warning(file, line, column, message);
    }
}
