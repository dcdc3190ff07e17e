package weatherlap.datasets.table;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One table of a TOML file. What is wrong in it is reported where it stands; what is wrong or absent is empty.
 *
 * @param name of the table; empty: the file itself
 */
public record TomlTable(Toml toml, String name, JsonNode node, Problems problems) {
    /** The table that a file is. */
    public static Optional<TomlTable> of(Toml toml, Problems problems) {
        return toml.tree(problems).map(tree -> new TomlTable(toml, "", tree, problems));
    }

    /** Reports the names that are none of these. */
    public void knowOnly(List<String> known) {
        for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
            String found = names.next();
            if (!known.contains(found)) {
                error(found, "is not known" + Nearest.hint(found, known));
            }
        }
    }

    /** A table in this one. */
    public Optional<TomlTable> table(String key) {
        JsonNode inner = node.path(key);
        if (!inner.isMissingNode() && !inner.isObject()) {
            error(key, "is not a table; expected: [" + key + "]");
        }
        return inner.isObject() ? Optional.of(new TomlTable(toml, key, inner, problems)) : Optional.empty();
    }

    /** Text of 1 to so many characters that a page can show, without space around it. */
    public Optional<String> text(String key, int longest) {
        JsonNode text = node.path(key);
        if (text.isMissingNode()) {
            return Optional.empty();
        }
        String fault = text.isTextual() ? fault(text.textValue(), longest) : "must be text in quotes";
        if (!fault.isEmpty()) {
            error(key, fault);
            return Optional.empty();
        }
        return Optional.of(text.textValue().strip());
    }

    private static String fault(String text, int longest) {
        if (text.isBlank()) {
            return "is empty; leave the line out if there is nothing to say";
        }
        if (text.length() > longest) {
            return "has " + text.length() + " characters (expected: at most " + longest + ")";
        }
        boolean shown = Characters.shown(text).equals(text) && text.indexOf('\r') < 0 && text.indexOf('\t') < 0;
        return shown ? "" : "holds a character that no page can show";
    }

    public OptionalDouble number(String key, CellType.Number type) {
        JsonNode number = node.path(key);
        if (number.isMissingNode()) {
            return OptionalDouble.empty();
        }
        String fault = number.isNumber() ? type.fault(number.asText()) : "is not a number (" + type.expected() + ")";
        if (!fault.isEmpty()) {
            error(key, fault);
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(number.doubleValue());
    }

    /** A whole number. */
    public Optional<Integer> whole(String key, CellType.Whole type) {
        JsonNode number = node.path(key);
        if (number.isMissingNode()) {
            return Optional.empty();
        }
        String fault = number.isNumber() ? type.fault(number.asText()) : "is not a number (" + type.expected() + ")";
        if (!fault.isEmpty()) {
            error(key, fault);
            return Optional.empty();
        }
        return Optional.of(number.intValue());
    }

    public void error(String key, String message) {
        int head = name.isEmpty() ? 0 : toml.line(name);
        int line = node.has(key) ? toml.line(key, head) : head;
        String place = name.isEmpty() ? Quoted.bare(key) : name + "." + Quoted.bare(key);
        problems.error(toml.file(), line, place, message);
    }
}
