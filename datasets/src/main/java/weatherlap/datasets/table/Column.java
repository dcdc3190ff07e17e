package weatherlap.datasets.table;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * One column of a table.
 *
 * @param mayBeEmpty an empty cell is allowed, and the column may be left out
 * @param meaning one line for the documentation
 */
public record Column(String name, CellType type, boolean mayBeEmpty, String meaning) {
    public static Column key(String name, String meaning) {
        return new Column(name, new CellType.Key(), false, meaning);
    }

    public static Column text(String name, String meaning) {
        return new Column(name, new CellType.Text(), false, meaning);
    }

    /** Text in a table that runs copy. */
    public static Column prose(String name, String meaning) {
        return new Column(name, new CellType.Prose(), false, meaning);
    }

    /** A number within [low, high] of the unit. */
    public static Column number(String name, String unit, double low, double high, String meaning) {
        return new Column(name, new CellType.Number(unit, low, false, high, false), false, meaning);
    }

    /** A number of any size, for a reader that looks at it later. */
    public static Column anyNumber(String name, String unit, String meaning) {
        return new Column(name, CellType.Number.any(unit), false, meaning);
    }

    /** A number above zero. */
    public static Column positive(String name, String unit, double high, String meaning) {
        return new Column(name, new CellType.Number(unit, 0, true, high, false), false, meaning);
    }

    /** A number within [low, high). */
    public static Column numberBelow(String name, String unit, double low, double high, String meaning) {
        return new Column(name, new CellType.Number(unit, low, false, high, true), false, meaning);
    }

    public static Column fraction(String name, String meaning) {
        return number(name, "fraction", 0, 1, meaning);
    }

    public static Column whole(String name, int low, int high, String meaning) {
        return new Column(name, new CellType.Whole(low, high), false, meaning);
    }

    /** One of the constants of an enum, in lower case. */
    public static Column word(String name, Class<? extends Enum<?>> type, String meaning) {
        return word(
                name,
                Arrays.stream(type.getEnumConstants())
                        .map(constant -> constant.name().toLowerCase(Locale.ROOT))
                        .toList(),
                meaning);
    }

    public static Column word(String name, List<String> allowed, String meaning) {
        return new Column(name, new CellType.Word(allowed), false, meaning);
    }

    /** One or more of the words, between bars: {@code one|another}. */
    public static Column words(String name, List<String> allowed, String meaning) {
        return new Column(name, new CellType.Words(new CellType.Word(allowed)), false, meaning);
    }

    /** One of the words, or text of one's own. */
    public static Column wordOrText(String name, List<String> allowed, String meaning) {
        return new Column(name, new CellType.WordOrText(new CellType.Word(allowed)), false, meaning);
    }

    public static Column yesNo(String name, String meaning) {
        return word(name, List.of("yes", "no"), meaning);
    }

    /** The same, allowed to be empty. */
    public Column optional() {
        return new Column(name, type, true, meaning);
    }

    /** Whether a mark of inches may stand in the cell without quotes around it. */
    boolean isLength() {
        return type instanceof CellType.Number number && number.isLength();
    }

    /** A cell of the file that is, at a glance, as tables have it and sound; null where it takes more than a glance to tell. */
    String usual(String raw) {
        if (raw.isEmpty()) {
            return mayBeEmpty ? raw : null;
        }
        if (type instanceof CellType.Word word) { // that of the list: what is asked of it later is asked of few texts
            int place = word.allowed().indexOf(raw);
            return place < 0 ? null : word.allowed().get(place);
        }
        boolean bare = type instanceof CellType.Number && CellType.Number.isDecimal(raw)
                || type instanceof CellType.Whole
                || type instanceof CellType.Key && !raw.endsWith(" ");
        return bare && type.fault(raw).isEmpty() ? raw : null;
    }

    /** What people typed, as tables have it. */
    String plain(String cell) {
        return cell.isEmpty() ? cell : type.plain(cell);
    }

    /** What is wrong with what was typed into a cell and read as such; empty: nothing. */
    String fault(String typed, String read) {
        String fault = fault(read);
        return fault.isEmpty() || typed.equals(read) || !fault.startsWith(Quoted.of(read))
                ? fault
                : Quoted.of(typed) + ", read as " + read + ","
                        + fault.substring(Quoted.of(read).length());
    }

    /** What is wrong with the text of a cell; empty: nothing. */
    String fault(String cell) {
        if (cell.isEmpty()) {
            return mayBeEmpty ? "" : "is empty (expected: " + type.expected() + ")";
        }
        return type.fault(cell);
    }
}
